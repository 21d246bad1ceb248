-- Read by Neovim 0.11 and later when `vim.lsp.enable("downlead")` is called (plugin/downlead.lua does it).
return {
  cmd = { "downlead", "lsp" },
  filetypes = { "downlead" },
  root_markers = { ".git" },
  workspace_required = false,
  -- a text of the built-in library has no project: the server that showed it reads it
  reuse_client = function(client, config)
    return client.name == config.name and (not config.root_dir or client.root_dir == config.root_dir)
  end,
  settings = {
    downlead = {
      hints = {
        loss = true,
        power = true,
        radiated = true,
        limits = true,
        readings = true,
        cables = true,
        bands = {},
        aligned = false,
      },
      swatches = false,
    },
  },
}
