" The Wyeline language server for ALE. It is found in the project's virtual environment, then on the PATH;
" let g:ale_wye_wyeline_executable = '/path/to/wyeline-server' to name another.
call ale#Set('wye_wyeline_executable', 'wyeline-server')
call ale#Set('wye_wyeline_use_global', get(g:, 'ale_use_global_executables', 0))
call ale#Set('wye_wyeline_options', '')

function! s:Executable(buffer) abort
  return ale#python#FindExecutable(a:buffer, 'wye_wyeline', ['wyeline-server'])
endfunction

function! s:Command(buffer) abort
  return '%e' . ale#Pad(ale#Var(a:buffer, 'wye_wyeline_options'))
endfunction

function! s:ProjectRoot(buffer) abort
  let l:git = ale#path#FindNearestDirectory(a:buffer, '.git')
  return empty(l:git) ? expand('#' . a:buffer . ':p:h') : fnamemodify(l:git, ':h:h')
endfunction

call ale#linter#Define('wye', {
\   'name': 'wyeline',
\   'lsp': 'stdio',
\   'language': 'wye',
\   'executable': function('s:Executable'),
\   'command': function('s:Command'),
\   'project_root': function('s:ProjectRoot'),
\})
