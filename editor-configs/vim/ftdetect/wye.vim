autocmd BufRead,BufNewFile *.wye setfiletype wye
