// What is added to the server's page so that it follows the cursor, and the figure in the status bar: without the editor, for tests.
"use strict";

/** Runs in the page. */
function inPage(api) {
  const rows = () => Array.from(document.querySelectorAll("[data-at]"));
  const place = (row) => {
    const [, file, line] = /^(.*):(\d+)$/.exec(row.dataset.at) || [];
    return { file, line: Number(line) };
  };
  window.addEventListener("message", ({ data }) => {
    const here = rows().filter((r) => { const p = place(r); return data.file.endsWith(`/${p.file}`) && p.line === data.line; });
    document.querySelectorAll(".here").forEach((r) => r.classList.remove("here"));
    here.forEach((r) => r.classList.add("here"));
    if (here[0]) here[0].scrollIntoView({ block: "nearest" });
  });
  document.addEventListener("click", (e) => {
    const row = e.target.closest("[data-at]");
    if (row) api.postMessage(place(row));
  });
}

/** The server's page with the script above, and no other, allowed to run. */
function dressed(page, nonce) {
  const policy = `default-src 'none'; style-src 'unsafe-inline'; script-src 'nonce-${nonce}'`;
  const head = `<meta http-equiv="Content-Security-Policy" content="${policy}"><style>[data-at]{cursor:pointer}body{color:var(--vscode-editor-foreground)}</style>`;
  const script = `<script nonce="${nonce}">(${inPage})(acquireVsCodeApi())</script>`;
  return page.replace("<head>", () => `<head>${head}`).replace("</body>", () => `${script}</body>`);
}

const VERDICTS = { met: "met", "not-met": "not met", "cannot-tell": "cannot tell" };

/** What the status bar says of a file: its limit with the smallest margin, from the server's JSON; nothing if it has none. */
function verdict(report, path) {
  let worst;
  for (const station of report?.stations ?? []) {
    for (const chain of station.chains.filter((c) => path.endsWith(`/${c.file}`))) {
      for (const band of chain.bands) {
        for (const limit of band.limits ?? []) {
          if (!worst || limit.margin_db < worst.limit.margin_db) worst = { chain, band, limit };
        }
      }
    }
  }
  if (!worst) return undefined;
  const { chain, band, limit } = worst;
  const watts = limit.value_w >= 100 ? limit.value_w.toFixed(0) : limit.value_w.toPrecision(3);
  const said = VERDICTS[limit.verdict] ?? String(limit.verdict);
  return {
    text: `${band.band} ${watts} W ${limit.quantity.toUpperCase()}, ${said} ${Math.abs(limit.margin_db).toFixed(2)} dB`,
    tooltip: `Nearest limit: ${chain.name} on ${band.band}, ${said}, margin ${limit.margin_db.toFixed(2)} dB ± ${limit.uncertainty_db.toFixed(2)} dB`,
    bad: limit.verdict !== "met",
  };
}

module.exports = { dressed, verdict, inPage };
