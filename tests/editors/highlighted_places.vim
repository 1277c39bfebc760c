" Reads JSON [[line, byte column], ...] (from 1), writes the syntax group at each place of the first buffer.
let s:places = json_decode(join(readfile($WYE_PLACES), ''))
let s:groups = []
for [s:line, s:column] in s:places
  call add(s:groups, synIDattr(synID(s:line, s:column, 1), 'name'))
endfor
call writefile([json_encode(s:groups)], $WYE_GROUPS)
qall!
