// Opens VS Code's own extension-test runner in the browser and ends with the suite's exit code.
"use strict";

const { browse } = require("./vscode_browser.js");

async function main() {
  const { browser, page } = await browse();
  const remote = `vscode-remote://127.0.0.1:${process.env.STORY_PORT}`;
  const payload = [
    ["extensionDevelopmentPath", `${remote}${process.env.STORY_EXTENSION}`],
    ["extensionTestsPath", `${remote}${__dirname}/vscode_suite/index.js`],
  ];
  const ended = new Promise((done) => {
    page.exposeFunction("codeAutomationExit", done);
    page.exposeFunction("codeAutomationLog", (type, args) => {
      if (type === "error") console.log(JSON.stringify(args).slice(0, 300));
    });
  });
  await page.goto(
    `http://127.0.0.1:${process.env.STORY_PORT}/?folder=${encodeURIComponent(process.env.STORY_WORKSPACE)}` +
      `&payload=${encodeURIComponent(JSON.stringify(payload))}`);
  const code = await ended;
  await browser.close();
  process.exit(code);
}

main().catch((error) => {
  console.error(error);
  process.exit(1);
});
