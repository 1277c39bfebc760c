-- Reads JSON [[line, byte column], ...] (from 1), writes the tree-sitter node at each place of the first buffer.
assert(vim.treesitter.language.add("wye", { path = vim.env.WYE_PARSER }))
local root = assert(vim.treesitter.get_parser(0, "wye")):parse()[1]:root()
local groups = {}
for _, place in ipairs(vim.json.decode(io.open(vim.env.WYE_PLACES):read("*a"))) do
  local line, column = place[1] - 1, place[2] - 1
  table.insert(groups, root:named_descendant_for_range(line, column, line, column + 1):type())
end
io.open(vim.env.WYE_GROUPS, "w"):write(vim.json.encode(groups))
vim.cmd("qall!")
