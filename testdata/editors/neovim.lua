-- What somebody does in Neovim: opens a plan with a mistake, sees it found, has it mended,
-- completes, asks what a word means, goes to where a name is given, gives another, lays the
-- file out and saves it. What went wrong is written to standard error, and the status is 1.
local program, file = vim.env.VIVARY, vim.env.PLAN
local function fail(text)
  io.stderr:write("neovim: " .. text .. "\n")
  vim.cmd("cquit 1")
end
local function until_true(what, is)
  if not vim.wait(20000, is, 20) then
    fail(what)
  end
end

vim.o.swapfile = false
vim.cmd("edit " .. file)
local buffer = vim.api.nvim_get_current_buf()
local id = vim.lsp.start_client({ name = "vivary", cmd = { program, "editor", "--now", "2026-11-25T18:00" }, root_dir = vim.fn.getcwd() })
if not id then
  fail("the server does not start")
end
vim.lsp.buf_attach_client(buffer, id)
until_true("nothing is found", function() return #vim.diagnostic.get(buffer) > 0 end)

local client = vim.lsp.get_client_by_id(id)
local function ask(method, params)
  local all = vim.lsp.buf_request_sync(buffer, method, params, 20000)
  local answer = all and all[id]
  if not answer or answer.error or answer.err then
    fail(method .. " is not answered: " .. vim.inspect(answer))
  end
  return answer.result
end
local function at(text, behind)
  local line = vim.fn.search("\\V" .. text, "w")
  if line == 0 then
    fail("there is no " .. text)
  end
  local column = vim.fn.col(".") - 1 + (behind or 0)
  vim.api.nvim_win_set_cursor(0, { line, column })
  return vim.lsp.util.make_position_params(0, client.offset_encoding)
end

-- The mistake, mended by the action that is preferred.
local mistake = vim.diagnostic.get(buffer, { severity = vim.diagnostic.severity.ERROR })[1]
if not mistake or not mistake.message:find("did you mean every") then
  fail("another mistake is found: " .. vim.inspect(mistake))
end
local place = { line = mistake.lnum, character = mistake.col }
local actions = ask("textDocument/codeAction", {
  textDocument = vim.lsp.util.make_text_document_params(buffer),
  range = { start = place, ["end"] = place },
  context = { diagnostics = {} },
})
vim.lsp.util.apply_workspace_edit(actions[1].edit, client.offset_encoding)
until_true("the mistake is shown still", function()
  return #vim.diagnostic.get(buffer, { severity = vim.diagnostic.severity.ERROR }) == 0
end)

-- A name is gone to, and another is given.
local to = ask("textDocument/definition", at('room    = "east"', 11))
if #to ~= 1 or not to[1].uri:find("rooms.care.hcl", 1, true) then
  fail("the room is not found: " .. vim.inspect(to))
end
local params = at('enclosure "burrow-a"', 12)
params.newName = "burrow-one"
vim.lsp.util.apply_workspace_edit(ask("textDocument/rename", params), client.offset_encoding)

-- What may stand there, and what it means.
if client.server_capabilities.completionProvider then
  at('substrate ', 0)
  vim.cmd("normal! O")
  vim.api.nvim_set_current_line("    de")
  vim.api.nvim_win_set_cursor(0, { vim.fn.line("."), 6 })
  local list = ask("textDocument/completion", vim.lsp.util.make_position_params(0, client.offset_encoding))
  local offered = {}
  for _, item in ipairs(list.items) do
    offered[item.label] = true
  end
  if not offered["dish_depth"] or offered["hides"] then -- which stands there
    fail("nothing of a housing is offered: " .. vim.inspect(vim.tbl_keys(offered)))
  end
  vim.cmd("normal! dd")
end
if client.server_capabilities.hoverProvider then
  local said = ask("textDocument/hover", at("substrate ", 2))
  if not said or not said.contents.value:lower():find("substrate") then
    fail("the substrate is not explained: " .. vim.inspect(said))
  end
end
if client.server_capabilities.documentFormattingProvider then
  local edits = ask("textDocument/formatting", { textDocument = vim.lsp.util.make_text_document_params(buffer), options = { tabSize = 2, insertSpaces = true } })
  vim.lsp.util.apply_text_edits(edits or {}, buffer, client.offset_encoding)
end
vim.cmd("silent write")
vim.cmd("silent wall")
vim.cmd("quitall!")
