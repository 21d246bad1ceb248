-- Starts the server and shows what it says. Called by plugin/downlead.lua; `setup` is for other wishes.
local M = {}

M.config = { hints = true, lenses = true, completion = false, messages = true }

--- @param options? { hints?: boolean, lenses?: boolean, completion?: boolean, messages?: boolean, cmd?: string[], settings?: table }
function M.setup(options)
  M.config = vim.tbl_extend("force", M.config, options or {})
  local server = {}
  if M.config.cmd then
    server.cmd = M.config.cmd
  end
  if M.config.settings then
    server.settings = { downlead = M.config.settings }
  end
  if vim.lsp.config and next(server) then
    vim.lsp.config("downlead", server)
  end
  M.server = server
end

--- Neovim before 0.11 has no `vim.lsp.enable`: the server is started for each buffer, and shared.
local function start_old(buffer)
  local file = vim.api.nvim_get_runtime_file("lsp/downlead.lua", false)[1]
  local config = vim.tbl_deep_extend("force", dofile(file), M.server or {})
  local git = vim.fs.find(".git", { upward = true, path = vim.fs.dirname(vim.api.nvim_buf_get_name(buffer)) })[1]
  vim.lsp.start({
    name = "downlead",
    cmd = config.cmd,
    settings = config.settings,
    root_dir = git and vim.fs.dirname(git) or vim.fn.getcwd(),
  }, { bufnr = buffer })
end

--- Neovim draws hints like NonText, whose contrast is about 2; text wants 4.5 (WCAG 2.1, 1.4.3). A colour scheme's own choice stays.
local function colours()
  for _, group in ipairs({ "LspInlayHint", "LspCodeLens" }) do
    if vim.api.nvim_get_hl(0, { name = group }).link == "NonText" then
      vim.api.nvim_set_hl(0, group, { link = "Comment" })
    end
  end
end

--- The message of the line with the cursor below that line, the worst sign of a line beside it, in this plugin's buffers only.
local function messages(client)
  if not M.config.messages or vim.fn.has("nvim-0.11") == 0 then
    return
  end
  local namespace = vim.lsp.diagnostic.get_namespace(client.id, false)
  vim.diagnostic.config({ virtual_lines = { current_line = true }, severity_sort = true }, namespace)
end

local function attached(event)
  local client = vim.lsp.get_client_by_id(event.data.client_id)
  if not client or client.name ~= "downlead" then
    return
  end
  local buffer = event.buf
  messages(client)
  if M.config.hints and vim.lsp.inlay_hint then
    vim.lsp.inlay_hint.enable(true, { bufnr = buffer })
  end
  if M.config.completion and vim.lsp.completion and client.server_capabilities.completionProvider then
    -- nothing is chosen or inserted before a key says so: Enter is a new line
    vim.bo[buffer].completeopt = "menuone,noselect,popup"
    vim.lsp.completion.enable(true, client.id, buffer, { autotrigger = true })
  end
  if M.config.lenses and client.server_capabilities.codeLensProvider then
    local group = vim.api.nvim_create_augroup("downlead_lens_" .. buffer, {})
    local refresh = function()
      vim.lsp.codelens.refresh({ bufnr = buffer })
    end
    vim.api.nvim_create_autocmd({ "BufEnter", "InsertLeave", "TextChanged" }, { group = group, buffer = buffer, callback = refresh })
    vim.schedule(refresh)
  end
end

--- What the server makes of the current file, beside it. It is worked out anew whenever the file changes.
local function beside(command, argument)
  local source = vim.api.nvim_get_current_buf()
  local client = vim.lsp.get_clients({ bufnr = source, name = "downlead" })[1]
  if not client then
    vim.notify("downlead: no server for this buffer", vim.log.levels.WARN)
    return
  end
  local view = vim.api.nvim_create_buf(false, true)
  vim.bo[view].bufhidden = "wipe"
  vim.bo[view].filetype = "markdown"
  local function fill()
    if not vim.api.nvim_buf_is_valid(view) then
      return true -- it was closed: no more autocommands
    end
    argument.uri = vim.uri_from_bufnr(source)
    local request = { command = command, arguments = { argument } }
    local handler = function(problem, result)
      local text = problem and problem.message or (type(result) == "table" and result.text or result or "")
      if vim.api.nvim_buf_is_valid(view) then
        vim.bo[view].modifiable = true
        vim.api.nvim_buf_set_lines(view, 0, -1, false, vim.split(text, "\n"))
        vim.bo[view].modifiable = false
      end
    end
    if vim.fn.has("nvim-0.11") == 1 then
      client:request("workspace/executeCommand", request, handler, source)
    else
      client.request("workspace/executeCommand", request, handler, source)
    end
  end
  fill()
  vim.api.nvim_create_autocmd({ "TextChanged", "InsertLeave" }, { buffer = source, callback = fill })
  vim.cmd("rightbelow vertical sbuffer " .. view)
  -- rows of tables stay rows
  vim.cmd("setlocal nowrap nonumber norelativenumber")
  vim.cmd("wincmd p")
end

--- The report of the current file.
function M.report()
  beside("downlead.report", {})
end

--- What the change since a revision of the git repository means on the air.
--- @param revision? string a commit, a branch or a tag; the last commit if none is named
function M.compare(revision)
  beside("downlead.compare", { revision = revision or "HEAD" })
end

function M.enable()
  colours()
  vim.api.nvim_create_autocmd("ColorScheme", { group = vim.api.nvim_create_augroup("downlead_colours", {}), callback = colours })
  vim.api.nvim_create_autocmd("LspAttach", { group = vim.api.nvim_create_augroup("downlead", {}), callback = attached })
  vim.api.nvim_create_user_command("DownleadReport", M.report, { desc = "Report of this file" })
  vim.api.nvim_create_user_command("DownleadCompare", function(command)
    M.compare(command.fargs[1])
  end, { nargs = "?", desc = "What the change since a revision (default HEAD) means on the air" })
  if vim.lsp.enable then
    vim.lsp.enable("downlead")
  else
    vim.api.nvim_create_autocmd("FileType", {
      pattern = "downlead",
      callback = function(event)
        start_old(event.buf)
      end,
    })
  end
end

return M
