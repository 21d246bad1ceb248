// The figure in the status bar: the nearest limit of the file in front.
"use strict";

const vscode = require("vscode");
const { verdict } = require("./page");

const PAUSE = 400;

class Verdict {
  #client;
  #item;
  #timer;
  #subscriptions;

  /** `client` gives the running language client, or nothing. */
  constructor(client) {
    this.#client = client;
    this.#item = vscode.window.createStatusBarItem("downlead.verdict", vscode.StatusBarAlignment.Left, 0);
    this.#item.name = "Downlead: nearest limit";
    this.#item.command = "downlead.showReport";
    this.#subscriptions = [
      vscode.window.onDidChangeActiveTextEditor(() => this.later()),
      vscode.workspace.onDidChangeTextDocument((e) => { if (e.document.languageId === "downlead") this.later(); }),
    ];
  }

  later() {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#fill(), PAUSE);
  }

  async #fill() {
    const document = vscode.window.activeTextEditor?.document;
    const client = this.#client();
    let found;
    if (document?.languageId === "downlead" && client?.isRunning()) {
      try {
        const question = { command: "downlead.export", arguments: [{ uri: document.uri.toString(), format: "json" }] };
        found = verdict(await client.sendRequest("workspace/executeCommand", question), document.uri.path);
      } catch {
        // a text that cannot be evaluated now has no verdict
      }
    }
    if (!found) return this.#item.hide();
    this.#item.text = found.text;
    this.#item.tooltip = found.tooltip;
    this.#item.backgroundColor = found.bad ? new vscode.ThemeColor("statusBarItem.warningBackground") : undefined;
    this.#item.show();
  }

  dispose() {
    clearTimeout(this.#timer);
    for (const s of this.#subscriptions) s.dispose();
    this.#item.dispose();
  }
}

module.exports = { Verdict };
