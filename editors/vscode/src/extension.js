// The VS Code client: starts `downlead lsp`, tells it the settings, shows reports.
"use strict";

const os = require("node:os");
const vscode = require("vscode");
const { LanguageClient, State, Trace } = require("vscode-languageclient/node");
const { serverSettings, serverCommand, reportAddress } = require("./settings");
const { Reports } = require("./reports");

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
    initializationOptions: serverSettings(config()),
    synchronize: { configurationSection: "downlead" },
    outputChannel: output,
    revealOutputChannelOn: 4, // never: errors are shown at their lines
    markdown: { isTrusted: false, supportHtml: false },
  };
  const fresh = new LanguageClient("downlead", "Downlead", { command, args }, options);
  fresh.onDidChangeState(({ newState }) => show(newState));
  client = fresh;
  try {
    await fresh.start();
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
  const missing = /ENOENT|EACCES/.test(String(error?.code ?? error));
  const text = missing
    ? `Downlead: the program "${command}" cannot be started. Install it, or say where it is.`
    : `Downlead: the server did not start. ${error?.message ?? error}`;
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

exports.activate = async (context) => {
  output = vscode.window.createOutputChannel("Downlead", { log: true });
  status = vscode.languages.createLanguageStatusItem("downlead.server", { language: "downlead" });
  Object.assign(status, { name: "Downlead", text: "Downlead", command: { command: "downlead.restart", title: "Restart" } });
  show(State.Stopped);
  const reports = new Reports(() => client);

  const restart = () => inOrder(stop).then(() => inOrder(start));
  context.subscriptions.push(
    output,
    status,
    reports,
    vscode.workspace.registerTextDocumentContentProvider("downlead-report", reports),
    vscode.commands.registerCommand("downlead.restart", restart),
    vscode.commands.registerCommand("downlead.showOutput", () => output.show()),
    vscode.commands.registerCommand("downlead.showReport", async (source) => {
      const editor = vscode.window.activeTextEditor;
      const from = source ? vscode.Uri.parse(String(source)) : editor?.document.languageId === "downlead" ? editor.document.uri : undefined;
      if (!from) {
        vscode.window.showInformationMessage("Downlead: open a .downlead file first.");
        return;
      }
      const report = await vscode.workspace.openTextDocument(vscode.Uri.from(reportAddress(from.toString())));
      await vscode.window.showTextDocument(report, { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true, preview: true });
    }),
    vscode.workspace.onDidGrantWorkspaceTrust(() => inOrder(start)),
    vscode.workspace.onDidChangeConfiguration(async (e) => {
      if (e.affectsConfiguration("downlead.server")) await restart();
      else if (e.affectsConfiguration("downlead.trace")) await client?.setTrace(Trace.fromString(config().get("trace.server", "off")));
    }),
  );
  await inOrder(start);
};

exports.deactivate = () => inOrder(stop);
