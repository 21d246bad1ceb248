// Reports and comparisons as read-only documents that follow the text.
"use strict";

const vscode = require("vscode");
const { question, SCHEMES } = require("./settings");

// a report is computed again when typing has paused this long (milliseconds)
const PAUSE = 250;

class Reports {
  #changed = new vscode.EventEmitter();
  #timers = new Map();
  #watch;
  #client;

  /** `client` gives the running language client, or nothing. */
  constructor(client) {
    this.#client = client;
    this.onDidChange = this.#changed.event;
    this.#watch = vscode.workspace.onDidChangeTextDocument((e) => {
      if (e.document.languageId === "downlead" && e.contentChanges.length > 0) this.#later();
    });
  }

  async provideTextDocumentContent(address) {
    const client = this.#client();
    if (!client?.isRunning()) return "The server is not running.\n";
    try {
      const text = await client.sendRequest("workspace/executeCommand", question(address));
      return typeof text === "string" ? text : (text?.text ?? "");
    } catch (error) {
      return `${error?.message ?? error}\n`;
    }
  }

  // a changed file may be used by the one reported, so all open reports follow
  #later() {
    for (const document of vscode.workspace.textDocuments) {
      if (!SCHEMES.includes(document.uri.scheme)) continue;
      const key = document.uri.toString();
      clearTimeout(this.#timers.get(key));
      this.#timers.set(key, setTimeout(() => {
        this.#timers.delete(key);
        this.#changed.fire(document.uri);
      }, PAUSE));
    }
  }

  dispose() {
    for (const timer of this.#timers.values()) clearTimeout(timer);
    this.#watch.dispose();
    this.#changed.dispose();
  }
}

module.exports = { Reports };
