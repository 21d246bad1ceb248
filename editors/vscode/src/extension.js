// The VS Code client: starts `downlead lsp`, tells it the settings, shows reports.
"use strict";

const os = require("node:os");
const vscode = require("vscode");
const { LanguageClient, State, Trace } = require("vscode-languageclient/node");
const { serverSettings, serverCommand, comparisonAddress, startFailure } = require("./settings");
const { Reports } = require("./reports");
const { RenderedReport } = require("./rendered");
const { Verdict } = require("./verdict");

/** The client, which says nothing of a failed start: `explain` says it once, with what to do. */
class Client extends LanguageClient {
  starting = true;

  error(message, data, show) {
    super.error(message, data, this.starting ? false : show);
  }
}

let client;
let output;
let status;
// one start or stop at a time, in the order they were asked for
let queue = Promise.resolve();

const config = () => vscode.workspace.getConfiguration("downlead");

function inOrder(step) {
  queue = queue.then(step, step);
  return queue;
}

async function start() {
  if (client || !vscode.workspace.isTrusted) return;
  const folder = vscode.workspace.workspaceFolders?.[0]?.uri.fsPath;
  const { command, args } = serverCommand(config(), os.homedir(), folder);
  const options = {
    // any scheme: unsaved, compared and library texts are read too
    documentSelector: [{ language: "downlead" }],
    initializationOptions: { ...serverSettings(config()), lensesAbove: true },
    synchronize: { configurationSection: "downlead" },
    outputChannel: output,
    revealOutputChannelOn: 4, // never: errors are shown at their lines
    initializationFailedHandler: () => false, // not tried again, and no message of its own
    markdown: { isTrusted: false, supportHtml: false },
  };
  const fresh = new Client("downlead", "Downlead", { command, args }, options);
  fresh.onDidChangeState(({ newState }) => show(newState));
  client = fresh;
  try {
    await fresh.start();
    fresh.starting = false;
    await fresh.setTrace(Trace.fromString(config().get("trace.server", "off")));
  } catch (error) {
    client = undefined;
    show(State.Stopped);
    output.error(String(error));
    explain(command, error);
  }
}

async function stop() {
  const old = client;
  client = undefined;
  try {
    await old?.stop();
  } catch (error) {
    // a server that is gone already cannot be asked to stop
    output.warn(String(error));
  }
}

async function explain(command, error) {
  const text = startFailure(command, error);
  const [settings, log] = ["Open Settings", "Show Output"];
  const choice = await vscode.window.showErrorMessage(text, settings, log);
  if (choice === settings) {
    vscode.commands.executeCommand("workbench.action.openSettings", "downlead.server.path");
  } else if (choice === log) {
    output.show();
  }
}

function show(state) {
  const [busy, severity, detail] =
    state === State.Running
      ? [false, vscode.LanguageStatusSeverity.Information, "running"]
      : state === State.Starting
        ? [true, vscode.LanguageStatusSeverity.Information, "starting"]
        : [false, vscode.LanguageStatusSeverity.Warning, "not running"];
  Object.assign(status, { busy, severity, detail });
}

/** Address of the document asked about: the one given, else the one in front. */
function sourceOf(given) {
  if (given) return String(given);
  const document = vscode.window.activeTextEditor?.document;
  if (document?.languageId === "downlead") return document.uri.toString();
  vscode.window.showInformationMessage("Downlead: open a .downlead file first.");
}

async function beside(address) {
  const made = await vscode.workspace.openTextDocument(vscode.Uri.from(address));
  await vscode.window.showTextDocument(made, { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true, preview: true });
}

exports.activate = async (context) => {
  output = vscode.window.createOutputChannel("Downlead", { log: true });
  status = vscode.languages.createLanguageStatusItem("downlead.server", { language: "downlead" });
  Object.assign(status, { name: "Downlead", text: "Downlead", command: { command: "downlead.restart", title: "Restart" } });
  show(State.Stopped);
  const reports = new Reports(() => client);
  const rendered = new RenderedReport(() => client);
  const verdict = new Verdict(() => client);

  const restart = () => inOrder(stop).then(() => inOrder(start));
  context.subscriptions.push(
    output,
    status,
    reports,
    rendered,
    verdict,
    vscode.workspace.registerTextDocumentContentProvider("downlead-report", reports),
    vscode.workspace.registerTextDocumentContentProvider("downlead-compare", reports),
    vscode.commands.registerCommand("downlead.restart", restart),
    vscode.commands.registerCommand("downlead.showOutput", () => output.show()),
    vscode.commands.registerCommand("downlead.showReport", async (source) => {
      const from = sourceOf(source);
      if (from) await rendered.show(from);
    }),
    vscode.commands.registerCommand("downlead.compareWithRevision", async (source) => {
      const from = sourceOf(source);
      if (!from) return;
      const revision = await vscode.window.showInputBox({
        title: "Compare with a revision",
        prompt: "A commit, a branch or a tag of the git repository",
        value: "HEAD",
      });
      if (revision?.trim()) await beside(comparisonAddress(from, revision.trim()));
    }),
    vscode.workspace.onDidGrantWorkspaceTrust(() => inOrder(start)),
    vscode.workspace.onDidChangeConfiguration(async (e) => {
      if (e.affectsConfiguration("downlead.server")) await restart();
      else if (e.affectsConfiguration("downlead.trace")) await client?.setTrace(Trace.fromString(config().get("trace.server", "off")));
    }),
  );
  await inOrder(start);
  verdict.later();
};

exports.deactivate = () => inOrder(stop);
