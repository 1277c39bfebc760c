-- Plays the story in Neovim and writes the report. Runs with `nvim --headless -S`.
local env = vim.env
local report = {}

local function wait(what, condition)
  if not vim.wait(40000, condition, 20) then
    error("waited in vain for " .. what)
  end
end

local function errors(buffer)
  return vim.diagnostic.get(buffer, { severity = vim.diagnostic.severity.ERROR })
end

local function messages(buffer)
  return vim.tbl_map(function(d) return d.message end, errors(buffer))
end

local function find(word)
  vim.fn.cursor(1, 1)
  assert(vim.fn.search("\\V" .. word, "cW") > 0, "no " .. word .. " in the buffer")
end

local function play()
  vim.lsp.enable("wyeline")
  vim.cmd.edit(vim.fn.fnameescape(env.STORY_FILE))
  local buffer = vim.api.nvim_get_current_buf()
  assert(vim.bo.filetype == "wye", "filetype is " .. vim.bo.filetype)
  wait("the server", function()
    local client = vim.lsp.get_clients({ bufnr = buffer, name = "wyeline" })[1]
    return client and client.initialized
  end)
  wait("the finding", function() return #errors(buffer) > 0 end)
  report.before = messages(buffer)
  local d = errors(buffer)[1]
  report.solved = {}
  wait("the solved finding", function()
    for _, each in ipairs(vim.diagnostic.get(buffer)) do
      if each.message:find("may flow in a fault", 1, true) then
        report.solved = { each.message:match("[^\n]*") }
      end
    end
    return #report.solved > 0
  end)
  assert(#errors(buffer) == #report.before, "the first findings are gone")
  report.marked = vim.api.nvim_buf_get_text(buffer, d.lnum, d.col, d.end_lnum, d.end_col, {})[1]

  find("switchboard")
  find(env.STORY_BOARD)
  vim.lsp.buf.hover()
  local function float()
    for _, window in ipairs(vim.api.nvim_list_wins()) do
      if vim.api.nvim_win_get_config(window).relative ~= "" then
        return window
      end
    end
  end
  wait("the hover", function() return float() ~= nil end)
  report.hover = table.concat(vim.api.nvim_buf_get_lines(vim.api.nvim_win_get_buf(float()), 0, -1, false), "\n")
  vim.api.nvim_win_close(float(), true)

  vim.fn.cursor(d.lnum + 1, d.col + 1)
  vim.ui.select = function(items, _, chosen)
    report.offered = vim.tbl_map(function(item) return item.action.title end, items)
    chosen(items[1], 1)
  end
  vim.lsp.buf.code_action({ context = { only = { "quickfix" }, diagnostics = vim.lsp.diagnostic.from({ d }) } })
  wait("the fix", function() return vim.fn.search("^transformer", "nw") > 0 end)
  wait("the end of the finding", function() return #errors(buffer) == 0 end)
  report.after = messages(buffer)

  find("panel")
  find(env.STORY_PANEL)
  vim.lsp.buf.rename(env.STORY_NEW_PANEL)
  wait("the rename", function() return vim.fn.search(env.STORY_NEW_PANEL, "nw") > 0 end)
  wait("the rename in the other file", function()
    for _, other in ipairs(vim.api.nvim_list_bufs()) do
      if vim.api.nvim_buf_get_name(other):find("pump%-house") and vim.bo[other].modified then
        return true
      end
    end
  end)
  vim.cmd("silent wall")
end

local ok, problem = xpcall(play, debug.traceback)
if not ok then
  io.stdout:write(problem .. "\n" .. vim.inspect(vim.diagnostic.get()) .. "\n")
  io.stdout:write(table.concat(vim.api.nvim_buf_get_lines(0, 0, -1, false), "\n") .. "\n")
  local log = io.open(vim.lsp.get_log_path())
  io.stdout:write(log and log:read("*a"):sub(-3000) or "")
end
vim.fn.writefile({ vim.json.encode(report) }, env.STORY_REPORT)
vim.lsp.stop_client(vim.lsp.get_clients())
vim.wait(3000, function() return #vim.lsp.get_clients() == 0 end, 20)
vim.cmd(ok and "qall!" or "cquit! 1")
