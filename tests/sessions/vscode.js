// Drives the page of VS Code as a person would. usage: node vscode.js FOLDER PORT CHROMIUM (see vscode.sh)
"use strict";
const fs = require("node:fs");
const path = require("node:path");
const { chromium } = require("playwright-core");

const [folder, port, browserPath] = process.argv.slice(2);
const story = JSON.parse(fs.readFileSync(path.join(folder, "story.json"), "utf8"));
const picture = (name) => path.join(folder, "pictures", `${name}.png`);
let failed = 0;
let page;

async function check(what, condition) {
  let ok = false;
  let why = "";
  try {
    ok = (await condition()) !== false;
  } catch (e) {
    why = e.message.split("\n").slice(0, 3).join(" | ");
  }
  console.log(`${ok ? "ok  " : "FAIL"} ${what}`);
  if (!ok) {
    failed += 1;
    if (why) console.log(`     ${why}`);
    await page.screenshot({ path: picture(`fail-${failed}`) }).catch(() => {});
  }
  return ok;
}

const seen = (locator, timeout = 20000) => locator.first().waitFor({ timeout });
const until = async (condition, timeout = 10000) => {
  const end = Date.now() + timeout;
  while (Date.now() < end) {
    if (await condition()) return true;
    await page.waitForTimeout(50);
  }
  return false;
};

// lines of the editor are drawn with blanks that do not break
const line = (pattern) => page.locator(".editor-instance .view-line").filter({ hasText: pattern });
const spaced = (text) => new RegExp(text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&").replace(/ +/g, "\\s+"));

const asking = () => page.locator(".quick-input-widget input:visible");

/** Puts the cursor there; the status line says when it is (its columns count a wide sign twice). */
async function goto(number, column = 1, wide = false) {
  const there = page.locator(".statusbar-item:visible", { hasText: new RegExp(`Ln ${number}, Col ${wide ? "" : column}\\b`) });
  await again(there, async () => {
    await page.keyboard.press("Control+1");
    await page.keyboard.press("Control+g");
    await seen(asking());
    // what stands in the box already (`:`) stays; a key that is lost shows in the place that is reached
    await page.keyboard.type(`${number}:${column}`);
    await page.keyboard.press("Enter");
    await page.locator(".quick-input-widget").waitFor({ state: "hidden" });
  });
}

async function command(name) {
  await again(page.locator(".quick-input-list .monaco-list-row", { hasText: name }), async () => {
    await page.keyboard.press("F1");
    await seen(asking());
    await page.keyboard.type(name);
  });
  await page.keyboard.press("Enter");
}

/** Does something until a thing is seen. Asked too soon after a jump, VS Code says there is nothing, or hides it again. */
async function again(locator, action) {
  for (let i = 0; i < 5; i += 1) {
    try {
      await action();
      await seen(locator, 4000);
      return;
    } catch {
      await page.keyboard.press("Escape");
    }
  }
  await seen(locator, 10);
}

/** The menu of what can be done here, with an entry of that text. */
const actions = (text) =>
  again(page.locator(".action-widget:visible .monaco-list-row", { hasText: text }), () => page.keyboard.press("Control+."));

async function saved(file) {
  await page.keyboard.press("Control+s");
  await page.waitForTimeout(300);
  return fs.readFileSync(file, "utf8");
}

const same = (what, text, file = story.file) => check(what, async () => {
  if (await until(async () => (await saved(file)) === text, 5000)) return true;
  const [got, wanted] = [fs.readFileSync(file, "utf8").split("\n"), text.split("\n")];
  const at = got.findIndex((l, i) => l !== wanted[i]);
  throw new Error(`line ${at + 1}: ${JSON.stringify(got[at])}, should be ${JSON.stringify(wanted[at])}`);
});

/** A page with that file in it. Now and then the page comes up without it. */
async function open(file) {
  const place = `vscode-remote://127.0.0.1:${port}${file}`;
  for (let i = 0; i < 3; i += 1) {
    await page.goto(`http://127.0.0.1:${port}/?folder=${story.ws}&payload=${encodeURIComponent(JSON.stringify([["openFile", place]]))}`);
    try {
      await seen(page.locator(".tab.active", { hasText: path.basename(file) }), 30000);
      return;
    } catch {
      // asked for anew
    }
  }
}

async function session() {
  await open(story.file);
  if (!(await check("the file is open", () => seen(line(spaced("Pellgarrow hill, Isle of Thrennock")), 60000)))) return;
  await page.keyboard.press("Control+b").catch(() => {});

  // hints
  await goto(story.antenna, 9);
  await check(`hint at the antenna: ERP ${story.erp}, EIRP ${story.eirp} ± ${story.uncertainty}`, () => seen(line(spaced(`ERP ${story.erp}, EIRP ${story.eirp} ± ${story.uncertainty}`)), 30000));
  await check("hint at the run: its loss and the power behind it", () => seen(line(/M1\s+0\.75\s+dB\s+→\s+12\.8\s+W/)));
  await check(`hint at the limit: met, ${story.margin}`, () => seen(line(spaced(`met: ${story.margin} under`))));
  await check("no message", async () => (await page.locator(".squiggly-error").count()) === 0);
  await check("a lens above the chain", () => seen(page.locator(".codelens-decoration:visible", { hasText: spaced(`met, ${story.margin}`) })));
  await page.screenshot({ path: picture("hints") });

  // hover
  await goto(story.use, 9);
  const hover = page.locator(".monaco-hover:visible", { hasText: /46\s+m\s+of\s+demo-seven-eighths-foam/ });
  await check("hover: the statement of the tag", () => again(hover, async () => {
    await page.keyboard.press("Control+k");
    await page.keyboard.press("Control+i");
  }));
  await check("hover: its loss", () => seen(hover.filter({ hasText: /0\.7[0-9]*\s+dB/ })));
  await page.screenshot({ path: picture("hover") });
  await page.keyboard.press("Escape");

  // break a line, see the message
  await goto(story.broken, story.column + 1);
  await page.keyboard.type("1");
  await check("the line is broken", () => seen(line(spaced("with W11 by"))));
  await check("the place is underlined", () => seen(page.locator(".squiggly-error")));
  await page.keyboard.press("Control+Shift+m");
  const problem = page.locator(".markers-panel .monaco-list-row", { hasText: /W11.*is not defined/ });
  await check("the message names what is wrong", () => seen(problem));
  await page.screenshot({ path: picture("message") });
  await page.keyboard.press("Control+Shift+m");

  // quick fix
  await goto(story.broken, story.column);
  await check("a quick fix is offered", () => actions(/W1(?!1)/));
  await page.screenshot({ path: picture("fix") });
  await page.keyboard.press("Enter");
  await check("the fix mends the line", () => seen(line(spaced("with W1 by"))));
  await check("the message is gone", () => page.locator(".squiggly-error").first().waitFor({ state: "detached", timeout: 10000 }));
  await same("columns right behind ±, all else as it was", story.original);

  // rename
  await goto(story.use, 9);
  const box = page.locator(".rename-box input:visible");
  await check("rename asks, the tag is the old name", async () => {
    await again(box, () => page.keyboard.press("F2"));
    return (await box.inputValue()) === "M1";
  });
  await box.fill("M9");
  await page.keyboard.press("Enter");
  await check("the hint stands beside the new name", () => seen(line(/M9\s+0\.75\s+dB/)));
  await same("rename changes the five places and nothing else", story.finished);

  // format
  await goto(story.untidy, story.untidy_text.indexOf("612") + 1);
  await page.keyboard.type("    ");
  await check("the line is untidy", () => seen(line(/ground\s{5}612/)));
  await page.keyboard.press("Control+Shift+i");
  await check("the file is formatted", () => seen(line(/ground\s612/)));
  await same("formatting changes nothing else", story.finished);

  // report
  await command("Downlead: Show Report");
  await check("the report is beside the file", () => seen(page.locator(".tab", { hasText: "rev4 report.md" })));
  await check("with its ERP", () => seen(page.locator(".editor-instance").nth(1).locator(".view-line").filter({ hasText: spaced(story.erp) })));
  await page.screenshot({ path: picture("report") });

  // definition of a built-in name: a text without a file
  const text = page.locator(".editor-instance .view-line").filter({ hasText: /^connector\s+n-pair/ });
  await check("definition of a built-in name opens its text", () => again(text, async () => {
    await goto(story.head + 8, "        connector 2 of n-p".length);
    await page.keyboard.press("F12");
  }));
  await page.screenshot({ path: picture("library") });
}

/** Columns behind signs that take two units of UTF-16. */
async function wide() {
  await open(story.wide);
  await check("a message in the second file", () => seen(page.locator(".squiggly-error"), 60000));
  await goto(4, "    transmitter 5 W, sheet \"xx xx p. 1\"; run 10 m of half-i".length, true);
  await check("a quick fix for a word behind wide signs", () => actions("half-inch-foam"));
  await page.keyboard.press("Enter");
  await check("the fix is in the text", () => seen(line(/half-inch-foam/)));
  await same("it changes just that word", story.wide_finished, story.wide);

  // a click on a lens
  await check("a click on the lens opens the report", () =>
    again(page.locator(".tab", { hasText: "report" }), () => page.locator(".codelens-decoration:visible a").first().click()));
  await check("of this chain", () => seen(page.locator(".editor-instance .view-line").filter({ hasText: /half-inch-foam|wide.*transmit/ }).filter({ hasNotText: /run\s+10|chain/ })));
  await page.waitForTimeout(500);
  await page.screenshot({ path: picture("lens") });
}

/** A whole file typed in, Enter at the end of each line as soon as the list has had time to open. Braces and quotes are closed by VS Code. */
async function write(file, text) {
  const name = path.basename(file);
  await open(file);
  if (!(await check(`${name}: an empty file is open`, () => seen(page.locator(".editor-instance .view-line"), 60000)))) return;
  await goto(1);
  const lines = text.trimEnd().split("\n").map((l) => l.trim());
  for (const content of lines) {
    if (content === "}") {
      // the brace is there: the empty line above it goes, the cursor to its end
      await page.keyboard.press("Control+Shift+k");
      await page.keyboard.press("End");
    } else {
      await page.keyboard.type(content, { delay: 15 });
      await page.waitForTimeout(content === "" ? 0 : 200);
    }
    await page.keyboard.press("Enter");
  }
  await page.screenshot({ path: picture(name) });
  await same(`${name}: what was typed is in the file, a line for each Enter`, text, file);
  await check(`${name}: no message in it`, () => until(async () => (await page.locator(".squiggly-error").count()) === 0));
}

async function typed() {
  await write(story.typed_bench, story.typed_bench_text);
  await goto(1);
  await check("the ranking is beside the session", () => seen(line(/session\s+reel-7.*A\s+<\s+B/)));
  await write(story.typed, story.typed_text);

  // a blank at the end of a line opens the list, too
  const [before, rest] = story.typed_text.split(/(?<="licence 12")/);
  await goto(before.split("\n").length, before.split("\n").at(-1).length + 1);
  await page.keyboard.type(" ");
  await check("the list opens after a blank", () => seen(page.locator(".suggest-widget.visible")));
  await page.keyboard.press("Enter");
  await same("Enter is a new line after it, too", `${before} \n        ${rest}`, story.typed);
}

(async () => {
  const flags = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];
  const browser = await chromium.launch({ executablePath: browserPath, args: flags });
  page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  try {
    await session();
    await wide();
    await typed();
  } catch (e) {
    await check(`the session broke off: ${e.message.split("\n").slice(0, 3).join(" | ")}`, () => false);
  }
  await browser.close();
  process.exit(failed ? 1 : 0);
})();
