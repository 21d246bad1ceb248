// What the settings mean, apart from the editor so that it can be tested without one.
"use strict";

const KINDS = ["loss", "power", "radiated", "limits", "readings", "cables"];

/** The settings as every editor hands them to the server, from anything with `get(name, default)`. */
function serverSettings(config) {
  const hints = { bands: config.get("hints.bands", []) };
  for (const kind of KINDS) hints[kind] = config.get(`hints.${kind}`, true);
  return { downlead: { hints } };
}

/** Program and arguments. `~` is the home folder, `${workspaceFolder}` the first folder. */
function serverCommand(config, home, folder) {
  let command = config.get("server.path", "downlead").trim() || "downlead";
  if (command === "~" || /^~[\\/]/.test(command)) command = home + command.slice(1);
  if (folder) command = command.replaceAll("${workspaceFolder}", folder);
  return { command, args: config.get("server.arguments", ["lsp"]) };
}

/** Address of a document's report; its last part is the tab's title. */
function reportAddress(source) {
  const name = (source.split(/[\\/]/).pop() || "report").replace(/\.downlead$/, "");
  return { scheme: "downlead-report", path: `/${name} report.md`, query: source };
}

module.exports = { KINDS, serverSettings, serverCommand, reportAddress };
