" Plays the story in Vim with ALE and writes the report. Runs with `vim -es -S`. What ALE asks (which fix, which name) is
" answered from standard input.
let s:report = {}

function! s:Wait(what, condition) abort
  let l:end = reltimefloat(reltime()) + 40
  while !a:condition()
    if reltimefloat(reltime()) > l:end
      throw 'waited in vain for ' . a:what
    endif
    sleep 50m
  endwhile
endfunction

function! s:Errors() abort
  return filter(copy(ale#engine#GetLoclist(bufnr(''))), 'v:val.type ==# "E"')
endfunction

function! s:Texts() abort
  return map(s:Errors(), 'get(v:val, "detail", v:val.text)')
endfunction

function! s:Find(word) abort
  call cursor(1, 1)
  if search('\V' . a:word, 'cW') == 0
    throw 'no ' . a:word . ' in the buffer'
  endif
endfunction

function! s:Preview() abort
  for l:window in range(1, winnr('$'))
    if getwinvar(l:window, '&previewwindow')
      return join(getbufline(winbufnr(l:window), 1, '$'), "\n")
    endif
  endfor
  return ''
endfunction

function! s:Play() abort
  execute 'edit' fnameescape($STORY_FILE)
  if &filetype !=# 'wye'
    throw 'filetype is ' . &filetype
  endif
  call s:Wait('the finding', {-> !empty(s:Errors())})
  let s:report.before = s:Texts()
  let l:first = s:Errors()[0]
  let s:report.marked = getline(l:first.lnum)[l:first.col - 1 : l:first.end_col - 1]

  call s:Find('switchboard')
  call search('\V' . $STORY_BOARD, 'W')
  ALEHover
  call s:Wait('the hover', {-> s:Preview() !=# ''})
  let s:report.hover = s:Preview()
  pclose

  call cursor(l:first.lnum, l:first.col)
  ALECodeAction
  call s:Wait('the fix', {-> search('^transformer', 'nw') > 0})
  ALELint " in batch no event tells ALE that the text has changed
  call s:Wait('the end of the finding', {-> empty(s:Errors())})
  let s:report.after = s:Texts()

  call s:Find('panel')
  call search('\V' . $STORY_PANEL, 'W')
  ALERename
  call s:Wait('the rename', {-> search($STORY_NEW_PANEL, 'nw') > 0})
  silent wall
  let l:other = fnamemodify($STORY_FILE, ':h') . '/pump-house.wye'
  call s:Wait('the rename in the other file', {-> join(readfile(l:other), "\n") =~# $STORY_NEW_PANEL})
endfunction

let s:failed = 0
try
  call s:Play()
catch
  let s:failed = 1
  let s:report.problem = v:exception . ' at ' . v:throwpoint
  let s:report.loclist = map(copy(ale#engine#GetLoclist(bufnr(''))), 'v:val.text')
  let s:report.buffer = getline(1, '$')
endtry
call writefile([json_encode(s:report)], $STORY_REPORT)
call ale#lsp#StopAll()
if s:failed
  cquit
endif
qall!
