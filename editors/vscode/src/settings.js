// What the settings mean, apart from the editor so that it can be tested without one.
"use strict";

const KINDS = ["loss", "power", "radiated", "limits", "readings", "cables"];

/** The settings as every editor hands them to the server, from anything with `get(name, default)`. */
function serverSettings(config) {
  const hints = { bands: config.get("hints.bands", []) };
  for (const kind of KINDS) hints[kind] = config.get(`hints.${kind}`, true);
  const diagnostics = { delay: config.get("diagnostics.delay", 1500), history: config.get("diagnostics.history", true) };
  return { downlead: { hints, swatches: config.get("swatches", false), diagnostics } };
}

/** Program and arguments. `~` is the home folder, `${workspaceFolder}` the first folder. */
function serverCommand(config, home, folder) {
  let command = config.get("server.path", "downlead").trim() || "downlead";
  if (command === "~" || /^~[\\/]/.test(command)) command = home + command.slice(1);
  if (folder) command = command.replaceAll("${workspaceFolder}", folder);
  return { command, args: config.get("server.arguments", ["lsp"]) };
}

const SCHEMES = ["downlead-report", "downlead-compare"];

function title(source) {
  return (source.split(/[\\/]/).pop() || "text").replace(/\.downlead$/, "");
}

/** Address of a document's report; its last part is the tab's title. */
function reportAddress(source) {
  return { scheme: "downlead-report", path: `/${title(source)} report.md`, query: source };
}

/** Address of a document's comparison with a revision. */
function comparisonAddress(source, revision) {
  const name = `${title(source)} since ${revision.replaceAll("/", "-")}.md`;
  return { scheme: "downlead-compare", path: `/${name}`, query: source, fragment: revision };
}

/** What the server is asked for the text at such an address. */
function question({ scheme, query, fragment }) {
  return scheme === "downlead-compare"
    ? { command: "downlead.compare", arguments: [{ uri: query, revision: fragment }] }
    : { command: "downlead.report", arguments: [{ uri: query }] };
}

/** What is said when the server does not start: the cause, and what to do. */
function startFailure(command, error) {
  const cause = String(error?.message ?? error);
  if (/ENOENT/.test(cause)) {
    return `Downlead: the program "${command}" was not found. Install it so that "downlead --version" answers in a terminal, or say in the settings where it is.`;
  }
  if (/EACCES/.test(cause)) return `Downlead: the program "${command}" may not be run. Make it executable, or name another one in the settings.`;
  return `Downlead: "${command}" did not start as a language server. ${cause}`;
}

module.exports = { KINDS, SCHEMES, serverSettings, serverCommand, reportAddress, comparisonAddress, question, startFailure };
