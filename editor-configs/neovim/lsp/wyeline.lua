-- The Wyeline language server (Neovim 0.11 and newer). Switch it on with: vim.lsp.enable("wyeline")
-- It is found in the virtual environment of the project, then on the PATH.

local markers = { ".venv", "venv", "pyproject.toml", ".git" }

--- The command that starts the server for a project's folder (nil: a file outside any project).
local function command(root)
  for _, place in ipairs({ ".venv/bin", "venv/bin", ".venv/Scripts", "venv/Scripts" }) do
    local program = root and vim.fs.joinpath(root, place, "wyeline-server")
    if program and vim.fn.executable(program) == 1 then
      return { program }
    end
  end
  return { "wyeline-server" }
end

return {
  cmd = function(dispatchers, config)
    local cmd = command(config and config.root_dir)
    if vim.fn.executable(cmd[1]) == 0 then
      vim.notify(
        "Wyeline: no wyeline-server in .venv, venv or on the PATH. Install it with: pip install /path/to/wyeline",
        vim.log.levels.WARN
      )
    end
    return vim.lsp.rpc.start(cmd, dispatchers, { cwd = config and config.root_dir or nil })
  end,
  filetypes = { "wye" },
  root_markers = markers,
}
