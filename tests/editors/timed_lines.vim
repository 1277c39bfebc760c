" Writes what it took to find the syntax groups along each line of the first buffer, in ms, or what Vim complained of.
let s:times = []
for s:line in range(1, line('$'))
  let s:begun = reltime()
  try
    for s:column in range(1, len(getline(s:line)), 50)
      call synID(s:line, s:column, 1)
    endfor
    call add(s:times, 1000 * reltimefloat(reltime(s:begun)))
  catch
    call add(s:times, v:exception)
  endtry
endfor
call writefile([json_encode(s:times)], $WYE_TIMES)
qall!
