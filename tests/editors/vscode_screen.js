// Plays the story on VS Code's screen: no server and its message, then finding, hover, quick fix and rename by keys and
// mouse. Writes the report and pictures.
"use strict";

const fs = require("fs");
const { browse } = require("./vscode_browser.js");

const env = process.env;
const report = {};

async function command(page, title) {
  await page.keyboard.press("F1");
  const box = page.locator(".quick-input-widget input");
  await box.waitFor();
  await box.fill(`>${title}`);
  await page.locator(".quick-input-list .monaco-list-row", { hasText: title }).first().waitFor();
  await page.keyboard.press("Enter");
  await page.locator(".quick-input-widget").waitFor({ state: "hidden" });
}

const spaces = (text) => text.replaceAll("\u00a0", " ");

async function until(what, condition) {
  const end = Date.now() + 60000;
  while (!(await condition())) {
    if (Date.now() > end) throw new Error(`waited in vain for ${what}`);
    await new Promise((done) => setTimeout(done, 50));
  }
}

async function play(page) {
  page.setDefaultTimeout(60000);
  await page.goto(`http://127.0.0.1:${env.STORY_PORT}/?folder=${encodeURIComponent(env.STORY_WORKSPACE)}`);
  const file = page.locator(".explorer-folders-view .monaco-list-row", { hasText: "site.wye" });
  await file.dblclick();
  const lines = page.locator(".editor-instance .view-lines");
  await lines.waitFor();

  // Without a server: a plain message. Then it is installed, and started by the command that the message names.
  const toast = page.locator(".notification-toast", { hasText: "language server was not found" });
  await toast.waitFor();
  report.missing = spaces(await toast.innerText());
  await page.screenshot({ path: `${env.STORY_PICTURES}/vscode-no-server.png` });
  fs.mkdirSync(`${env.STORY_WORKSPACE}/.venv/bin`, { recursive: true });
  fs.symlinkSync(env.STORY_SERVER, `${env.STORY_WORKSPACE}/.venv/bin/wyeline-server`);
  await command(page, "Wyeline: Restart the Language Server");
  await command(page, "Notifications: Clear All Notifications");

  const squiggle = page.locator(".editor-instance .squiggly-error");
  await squiggle.first().waitFor();
  await command(page, "View: Toggle Problems");
  const problems = page.locator(".markers-panel .monaco-list-row");
  await problems.first().waitFor();
  const errors = () => page.locator(".markers-panel .monaco-list-row .codicon-error").count();
  await until("the Problems list", errors);
  // Rows are drawn one by one, and anew when what is solved joins them: a look in between finds a part of them.
  await until("the reason why it cannot be connected", async () => {
    report.before = (await problems.allInnerTexts()).map(spaces);
    return report.before.some((row) => row.includes("480 V"));
  });

  // What is solved at rest: in the list, and above the board.
  const solved = page.locator(".markers-panel .monaco-list-row", { hasText: "may flow in a fault" });
  const lens = page.locator(".editor-instance .codelens-decoration", { hasText: /fault 2\d/ });
  await solved.first().waitFor();
  // VS Code asks for lenses anew only while the text has the focus; what the list took away meanwhile comes with it.
  await command(page, "View: Focus Active Editor Group");
  await lens.first().waitFor();
  const fault = /fault [\d.]+\skA/;
  report.solved = [spaces(await solved.first().innerText()), fault.exec(spaces(await lens.first().innerText()))[0]];
  await page.screenshot({ path: `${env.STORY_PICTURES}/vscode-solved.png` });

  // Hover over the board, by mouse. The line is drawn anew whenever its colours arrive, so its place is asked for again.
  const board = lines.locator(".view-line", { hasText: "switchboard" });
  const name = board.locator("span span", { hasText: env.STORY_BOARD.replace(/^"|"$/g, "").split(" ")[0] }).last();
  const hover = page.locator(".monaco-hover:visible", { hasText: "480" }).first();
  await until("the hover", async () => {
    const box = await name.boundingBox();
    if (!box) return false;
    const [x, y] = [box.x + Math.min(25, box.width / 2), box.y + box.height / 2];
    await page.mouse.move(x + 300, y + 200);
    await page.mouse.move(x, y, { steps: 8 });
    return hover.waitFor({ timeout: 5000 }).then(() => true, () => false);
  });
  report.hover = spaces(await hover.innerText());
  await page.screenshot({ path: `${env.STORY_PICTURES}/vscode-hover.png` });
  await page.mouse.move(2, 2);

  // The fix: next problem, quick fix, first action.
  await page.locator(".markers-panel .monaco-list-row", { has: page.locator(".codicon-error") }).first().dblclick();
  await until("the cursor in the editor", () => page.evaluate(() => !!document.activeElement?.closest(".editor-instance")));
  await page.locator(".editor-instance [class*='lightbulb']").first().waitFor();
  const action = page.locator(".action-widget .monaco-list-row.action", { hasText: "ransformer" }).first();
  // The menu closes again when the editor is laid out anew at that moment, so it is asked for until it stays.
  await until("the fix", async () => {
    if (/\btransformer /.test(spaces(await lines.innerText()))) return true;
    try {
      if (!(await action.isVisible())) await page.keyboard.press("Control+.");
      await action.waitFor({ timeout: 3000 });
      await page.screenshot({ path: `${env.STORY_PICTURES}/vscode-fix.png` });
      await action.click({ timeout: 3000 });
      await page.locator(".editor-instance .view-line", { hasText: /^transformer\s/ }).waitFor({ timeout: 10000 });
    } catch (error) {
      if (error.name !== "TimeoutError") throw error;
    }
    return false;
  });
  await squiggle.first().waitFor({ state: "detached" });
  await until("the end of the finding", async () => (await errors()) === 0);
  report.after = [];

  // Rename the panel: click on it, F2, the new name.
  const panel = lines.locator(".view-line", { hasText: /^panel/ }).locator("span span", { hasText: env.STORY_PANEL });
  const rename = page.locator(".rename-box input");
  // The box too closes when the editor is laid out anew at that moment.
  await until("the rename", async () => {
    if ((await lines.innerText()).includes(env.STORY_NEW_PANEL)) return true;
    try {
      if (!(await rename.isVisible())) {
        await panel.last().click({ timeout: 3000 });
        await page.keyboard.press("F2");
      }
      await rename.waitFor({ timeout: 3000 });
      await rename.fill(env.STORY_NEW_PANEL, { timeout: 3000 });
      await page.keyboard.press("Enter");
      await page.locator(".editor-instance .view-line", { hasText: env.STORY_NEW_PANEL }).first().waitFor({ timeout: 10000 });
    } catch (error) {
      if (error.name !== "TimeoutError") throw error;
    }
    return false;
  });
  await command(page, "File: Save All");
  await until("the saved files", () =>
    ["site.wye", "pump-house.wye"].every((name) => fs.readFileSync(`${env.STORY_WORKSPACE}/${name}`, "utf8").includes(env.STORY_NEW_PANEL)));
  await page.screenshot({ path: `${env.STORY_PICTURES}/vscode-renamed.png` });
}

async function main() {
  const { browser, page } = await browse();
  let code = 0;
  try {
    await play(page);
  } catch (error) {
    console.log(error);
    await page.screenshot({ path: `${env.STORY_PICTURES}/vscode-failed.png` }).catch(() => {});
    code = 1;
  }
  fs.writeFileSync(env.STORY_REPORT, JSON.stringify(report));
  await browser.close();
  process.exit(code);
}

main();
