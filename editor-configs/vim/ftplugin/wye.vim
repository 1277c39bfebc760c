" Wyeline models (*.wye): comments and indentation.
if exists('b:did_ftplugin')
  finish
endif
let b:did_ftplugin = 1

setlocal commentstring=//\ %s comments=:///,://
setlocal expandtab shiftwidth=2 softtabstop=2 autoindent
" A tag such as WET-1 or a key such as x/r is one word.
setlocal iskeyword=@,48-57,_,-,.,/,192-255
setlocal formatoptions-=t formatoptions+=croql
let b:undo_ftplugin = 'setlocal commentstring< comments< expandtab< shiftwidth< softtabstop< autoindent< formatoptions< iskeyword<'
