// Nothing typed is lost: by a reload, a sleep, a restart of the program, or another hand in the file.
import assert from "node:assert/strict";
import { readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { browser, check_access, check_quiet, open, open_in, run, saved, Serving, settled } from "./bench.mjs";

const chromium = await browser();
const sell = (page) => page.getByLabel("Pieces to sell", { exact: true });

async function begun() {
  const serving = await new Serving().start();
  const page = await open(chromium, serving.address);
  await settled(page);
  return { serving, page };
}

async function ended({ serving, page }) {
  await page.context().close();
  await serving.end();
}

await run({
  "a reload in the middle of typing keeps what was typed": async () => {
    const at = await begun();
    await sell(at.page).fill("33");
    await at.page.reload(); // sooner than it is written
    await settled(at.page);
    assert.equal(await sell(at.page).inputValue(), "33");
    await saved(at.page);
    assert.equal(at.serving.file("spring_order.run.json").sell, 33);
    check_quiet(at.page);
    await ended(at);
  },

  "a restart of the program keeps it, and the page goes on by itself while it is away": async () => {
    const at = await begun();
    await sell(at.page).fill("21");
    await saved(at.page);
    const port = at.serving.port;
    await at.serving.stop();
    await sell(at.page).fill("22"); // with nobody to save it
    await at.page.getByText("The program does not answer").first().waitFor();
    await check_access(at.page, "without the program");
    await at.serving.start();
    assert.equal(at.serving.port, port, "a folder's port is its own");
    await at.page.goto(at.serving.address);
    await at.page.reload();
    await settled(at.page);
    assert.equal(await sell(at.page).inputValue(), "22");
    await saved(at.page);
    assert.equal(at.serving.file("spring_order.run.json").sell, 22);
    await ended(at);
  },

  "a file changed underneath is noticed, and either may stay": async () => {
    const at = await begun();
    await sell(at.page).fill("24");
    await saved(at.page);
    const path = join(at.serving.folder, "spring_order.run.json");
    // Whole or not at all, as editors write.
    const theirs = () => {
      writeFileSync(`${path}.new`, readFileSync(path, "utf8").replace(/"sell": \d+/, '"sell": 50'));
      renameSync(`${path}.new`, path);
    };
    theirs();
    await at.page.getByRole("heading", { name: /changed underneath/ }).waitFor();
    await check_access(at.page, "a file changed underneath");
    await at.page.getByRole("button", { name: "Take what is in the file" }).click();
    await settled(at.page);
    assert.equal(await sell(at.page).inputValue(), "50");
    await sell(at.page).fill("25");
    await saved(at.page);
    theirs();
    await at.page.getByRole("button", { name: "Keep what is on this page" }).click();
    await saved(at.page);
    assert.equal(at.serving.file("spring_order.run.json").sell, 25);
    check_quiet(at.page);
    await ended(at);
  },

  "a run that is no JSON any more does not stand in the way of the others": async () => {
    const at = await begun();
    await sell(at.page).fill("24");
    await saved(at.page);
    await at.page.goto("about:blank");
    writeFileSync(join(at.serving.folder, "spring_order.run.json"), "{ half a run");
    await at.page.goto(at.serving.address);
    await settled(at.page);
    assert.equal(await sell(at.page).inputValue(), "46"); // the example again
    check_quiet(at.page);
    await ended(at);
  },

  "two tabs on one run do not write over each other": async () => {
    const at = await begun();
    await sell(at.page).fill("24");
    await saved(at.page);
    const other = await open_in(at.page.context(), at.serving.address);
    await settled(other);
    await sell(other).fill("31");
    await saved(other);
    await at.page.getByRole("heading", { name: /changed underneath/ }).waitFor();
    assert.equal(at.serving.file("spring_order.run.json").sell, 31);
    await ended(at);
  },
});
await chromium.close();
