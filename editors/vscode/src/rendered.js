// The report as a page beside the text: it follows what is typed and the cursor, and a click leads back to the line.
"use strict";

const crypto = require("node:crypto");
const path = require("node:path");
const vscode = require("vscode");
const { dressed } = require("./page");

// a report is computed anew when typing has paused this long (milliseconds)
const PAUSE = 250;

class RenderedReport {
  #client;
  #panel;
  #source;
  #timer;
  #subscriptions;

  /** `client` gives the running language client, or nothing. */
  constructor(client) {
    this.#client = client;
    this.#subscriptions = [
      vscode.workspace.onDidChangeTextDocument((e) => {
        if (this.#panel && e.document.languageId === "downlead" && e.contentChanges.length > 0) this.#later();
      }),
      vscode.window.onDidChangeTextEditorSelection((e) => this.#follow(e.textEditor)),
    ];
  }

  async show(source) {
    this.#source = source;
    if (!this.#panel) {
      const where = { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true };
      this.#panel = vscode.window.createWebviewPanel("downlead.report", "Report", where, { enableScripts: true, localResourceRoots: [] });
      this.#panel.onDidDispose(() => { this.#panel = undefined; });
      this.#panel.webview.onDidReceiveMessage((at) => this.#goto(at));
    }
    this.#panel.title = `${path.basename(vscode.Uri.parse(source).path)} report`;
    await this.#fill();
  }

  #later() {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#fill(), PAUSE);
  }

  async #fill() {
    const client = this.#client();
    let page;
    try {
      if (!client?.isRunning()) throw new Error("The server is not running. Downlead: Restart Server starts it again.");
      page = await client.sendRequest("workspace/executeCommand", { command: "downlead.export", arguments: [{ uri: this.#source, format: "html" }] });
    } catch (error) {
      page = `<!DOCTYPE html><html><head></head><body><p>${String(error?.message ?? error).replace(/[&<]/g, (c) => (c === "&" ? "&amp;" : "&lt;"))}</p></body></html>`;
    }
    if (!this.#panel) return;
    this.#panel.webview.html = dressed(page, crypto.randomBytes(16).toString("hex"));
    const editor = vscode.window.visibleTextEditors.find((e) => e.document.uri.toString() === this.#source);
    if (editor) this.#follow(editor);
  }

  #follow(editor) {
    if (!this.#panel || editor.document.uri.toString() !== this.#source) return;
    this.#panel.webview.postMessage({ file: editor.document.uri.path, line: editor.selection.active.line + 1 });
  }

  async #goto({ file, line }) {
    const source = vscode.Uri.parse(this.#source);
    // addresses in a report are relative to the root: the used file whose path ends so, or the source itself
    const open = vscode.workspace.textDocuments.find((d) => d.uri.scheme === source.scheme && d.uri.path.endsWith(`/${file}`));
    const folder = vscode.workspace.getWorkspaceFolder(source);
    const uri = open?.uri ?? (folder ? vscode.Uri.joinPath(folder.uri, file) : source);
    const at = new vscode.Range(line - 1, 0, line - 1, 0);
    await vscode.window.showTextDocument(uri, { viewColumn: vscode.ViewColumn.One, selection: at });
  }

  dispose() {
    clearTimeout(this.#timer);
    for (const s of this.#subscriptions) s.dispose();
    this.#panel?.dispose();
  }
}

module.exports = { RenderedReport };
