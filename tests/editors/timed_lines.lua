-- Writes the processor time that parsing each line of the first buffer took, in ms.
assert(vim.treesitter.language.add("wye", { path = vim.env.WYE_PARSER }))
local times = {}
for _, line in ipairs(vim.api.nvim_buf_get_lines(0, 0, -1, false)) do
  local begun = os.clock()
  vim.treesitter.get_string_parser(line .. "\n", "wye"):parse()
  table.insert(times, 1000 * (os.clock() - begun))
end
io.open(vim.env.WYE_TIMES, "w"):write(vim.json.encode(times))
vim.cmd("qall!")
