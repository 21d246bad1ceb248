"use strict";

const assert = require("node:assert/strict");
const fs = require("node:fs");
const path = require("node:path");
const test = require("node:test");
const { KINDS, SCHEMES, serverSettings, serverCommand, reportAddress, comparisonAddress, question, startFailure } = require("../src/settings");

const manifest = JSON.parse(fs.readFileSync(path.join(__dirname, "../package.json"), "utf8"));
const declared = manifest.contributes.configuration.properties;

/** A configuration that says what `values` say and else the default of package.json. */
const config = (values = {}) => ({
  get(name, otherwise) {
    if (name in values) return values[name];
    const property = declared[`downlead.${name}`];
    assert.ok(property, `${name} is not declared in package.json`);
    assert.deepEqual(property.default, otherwise, `default of ${name}`);
    return property.default;
  },
});

test("every hint of package.json reaches the server, and no other", () => {
  const { hints } = serverSettings(config()).downlead;
  const names = Object.keys(declared).filter((n) => n.startsWith("downlead.hints.")).map((n) => n.slice("downlead.hints.".length));
  assert.deepEqual(Object.keys(hints).sort(), names.sort());
  for (const kind of KINDS) assert.equal(hints[kind], true);
  assert.deepEqual(hints.bands, []);
  assert.equal(serverSettings(config({ "hints.loss": false })).downlead.hints.loss, false);
});

test("swatches reach the server, and none are shown unless wanted", () => {
  assert.equal(serverSettings(config()).downlead.swatches, false);
  assert.equal(serverSettings(config({ swatches: true })).downlead.swatches, true);
});

test("every setting of package.json reaches the server, but those about its program", () => {
  const sent = Object.keys(serverSettings(config()).downlead);
  const names = Object.keys(declared).map((n) => n.split(".")[1]).filter((n) => !["server", "trace"].includes(n));
  assert.deepEqual(sent.sort(), [...new Set(names)].sort());
});

// seen in the editor by tests/sessions/vscode.js
test("as shipped Enter takes an entry only where one was begun and it changes the text", () => {
  const defaults = manifest.contributes.configurationDefaults["[downlead]"];
  assert.equal(defaults["editor.acceptSuggestionOnEnter"], "smart");
  assert.equal(defaults["editor.suggest.selectionMode"], "whenQuickSuggestion");
});

test("command of the server", () => {
  assert.deepEqual(serverCommand(config(), "/home/x"), { command: "downlead", args: ["lsp"] });
  assert.equal(serverCommand(config({ "server.path": "~/bin/downlead" }), "/home/x").command, "/home/x/bin/downlead");
  assert.equal(serverCommand(config({ "server.path": "~odd/downlead" }), "/home/x").command, "~odd/downlead");
  assert.equal(serverCommand(config({ "server.path": "${workspaceFolder}/d" }), "/home/x", "/w").command, "/w/d");
  assert.equal(serverCommand(config({ "server.path": " " }), "/home/x").command, "downlead");
});

test("a report's address holds its source", () => {
  const address = reportAddress("file:///a%20b/rev1.downlead");
  assert.equal(address.scheme, "downlead-report");
  assert.equal(address.path, "/rev1 report.md");
  assert.equal(address.query, "file:///a%20b/rev1.downlead");
});

test("a comparison's address holds its source and its revision", () => {
  const address = comparisonAddress("file:///a%20b/rev1.downlead", "origin/main~2");
  assert.equal(address.path, "/rev1 since origin-main~2.md");
  assert.ok(SCHEMES.includes(address.scheme));
  assert.deepEqual(question(address), { command: "downlead.compare", arguments: [{ uri: "file:///a%20b/rev1.downlead", revision: "origin/main~2" }] });
  assert.deepEqual(question(reportAddress("file:///x.downlead")), { command: "downlead.report", arguments: [{ uri: "file:///x.downlead" }] });
});

test("a program that is not there is said with what to do", () => {
  const { error } = require("node:child_process").spawnSync("no-such-program-anywhere");
  // as the client hands it on: a text with the system's words in it
  const text = startFailure("downlead", `Launching server using command downlead failed. ${error}`);
  assert.match(text, /"downlead" was not found\. Install it/);
  assert.match(text, /settings/);
  assert.match(startFailure("/x", new Error("spawn /x EACCES")), /executable/);
  assert.match(startFailure("/bin/true", new Error("Pending response rejected")), /did not start as a language server\. Pending/);
});

test("the editor's commands are not the server's", () => {
  const server = fs.readFileSync(path.join(__dirname, "../../../crates/server/src/capabilities.rs"), "utf8");
  for (const { command } of manifest.contributes.commands) assert.ok(!server.includes(`"${command}"`), command);
});

test("every command is declared, and its icon or menu names an existing one", () => {
  const source = fs.readFileSync(path.join(__dirname, "../src/extension.js"), "utf8");
  const registered = [...source.matchAll(/registerCommand\("([^"]+)"/g)].map((m) => m[1]).sort();
  assert.deepEqual(manifest.contributes.commands.map((c) => c.command).sort(), registered);
  for (const menu of Object.values(manifest.contributes.menus).flat()) assert.ok(registered.includes(menu.command));
});
