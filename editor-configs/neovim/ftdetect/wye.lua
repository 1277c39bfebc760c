vim.filetype.add({ extension = { wye = "wye" } })
