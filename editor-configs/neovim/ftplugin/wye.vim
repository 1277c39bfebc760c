" Wyeline models (*.wye): comments and indentation.
if exists('b:did_ftplugin')
  finish
endif
let b:did_ftplugin = 1

setlocal commentstring=//\ %s comments=:///,://
setlocal expandtab shiftwidth=2 softtabstop=2 autoindent
setlocal formatoptions-=t formatoptions+=croql
let b:undo_ftplugin = 'setlocal commentstring< comments< expandtab< shiftwidth< softtabstop< autoindent< formatoptions<'
