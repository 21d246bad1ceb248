// Takes the picture of a chain with its hints. usage: node hints_picture.js FOLDER PORT CHROMIUM (see hints_picture.sh)
"use strict";
const fs = require("node:fs");
const path = require("node:path");
const { chromium } = require("playwright-core");

const [folder, port, executablePath] = process.argv.slice(2);
const story = JSON.parse(fs.readFileSync(path.join(folder, "story.json"), "utf8"));
const file = path.join(folder, "user", "User", "settings.json");
// only the text: nothing that follows the cursor
fs.writeFileSync(file, JSON.stringify({
  ...JSON.parse(fs.readFileSync(file, "utf8")),
  "breadcrumbs.enabled": false, "editor.stickyScroll.enabled": false, "editor.lightbulb.enabled": "off", "editor.matchBrackets": "never",
  "editor.occurrencesHighlight": "off", "editor.renderLineHighlight": "none", "editor.guides.indentation": false,
  "editor.guides.bracketPairs": false, "editor.cursorStyle": "line-thin", "workbench.activityBar.location": "hidden",
  // the theme's own grey is too light for a small picture
  "workbench.colorCustomizations": { "editorInlayHint.foreground": "#5d6778", "editorInlayHint.background": "#f3f5f8", "editorCodeLens.foreground": "#5d6778" },
}));

(async () => {
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking"] });
  const page = await browser.newPage({ viewport: { width: 1100, height: 1100 }, deviceScaleFactor: 2 });
  const place = `vscode-remote://127.0.0.1:${port}${story.file}`;
  await page.goto(`http://127.0.0.1:${port}/?folder=${story.ws}&payload=${encodeURIComponent(JSON.stringify([["openFile", place]]))}`);
  await page.locator(".view-line").first().waitFor({ timeout: 60000 });
  await page.waitForTimeout(1500);
  if (await page.locator(".part.sidebar:visible").count()) await page.keyboard.press("Control+b");
  const goto = async (line) => {
    await page.keyboard.press("Control+1");
    await page.keyboard.press("Control+g");
    await page.locator(".quick-input-widget input:visible").waitFor();
    await page.keyboard.type(String(line));
    await page.keyboard.press("Enter");
  };
  await goto(story.head + 12);
  await page.locator(".view-line", { hasText: /ERP/ }).first().waitFor({ timeout: 30000 });
  await page.locator(".codelens-decoration:visible").first().waitFor();
  // the cursor out of the picture, the scrolling done with
  await goto(story.head + 19);
  await page.waitForTimeout(1500);
  const box = async (text) => page.locator(".view-line", { hasText: text }).first().boundingBox();
  const top = await page.locator(".codelens-decoration:visible").first().boundingBox();
  const head = await box(/chain\s+talk-out-2m\s/);
  const limit = await box(/limit\s+30/);
  const bottom = limit.y + 2 * limit.height + 1;
  const start = Math.min(top.y, head.y) - 1;
  const numbers = await page.locator(".line-numbers:visible").first().boundingBox();
  await page.screenshot({ path: path.join(folder, "pictures", "hints.png"), clip: { x: numbers.x - 4, y: start, width: 930, height: bottom - start } });
  await browser.close();
})().catch((e) => {
  console.error(`FAIL ${e.message}`);
  process.exit(1);
});
