-- Findings as virtual lines: Neovim cuts them off at the window's edge, so they are broken at blanks before it.
local M = {}

-- Columns kept free for the sign column, the mark under the finding and the rule's name before the first line.
local LEAST, KEPT = 40, 34

---@param text string
---@param columns integer
---@return string text in lines of at most so many columns, those that were broken off set in by two blanks
function M.broken(text, columns)
  local lines = {}
  for line in vim.gsplit(text, "\n", { plain = true }) do
    local current, lead = "", ""
    for word in line:gmatch("%S+") do
      local longer = current == "" and lead .. word or current .. " " .. word
      if current ~= "" and vim.fn.strdisplaywidth(longer) > columns then
        table.insert(lines, current)
        lead = "  "
        longer = lead .. word
      end
      current = longer
    end
    table.insert(lines, current)
  end
  return table.concat(lines, "\n")
end

---@param diagnostic vim.Diagnostic
---@return string message for `vim.diagnostic.config({ virtual_lines = { format = ... } })`
function M.wrapped(diagnostic)
  local width = vim.api.nvim_win_get_width(0) - diagnostic.col - KEPT
  return M.broken(diagnostic.message, math.max(LEAST, width))
end

return M
