// The solid turns by buttons; a browser that cannot draw one shows a drawing instead.
import assert from "node:assert/strict";
import { browser, check_access, check_quiet, open, run, Serving, settled, to } from "./bench.mjs";

const looks = (page) =>
  page
    .locator("solid-panel canvas")
    .screenshot()
    .then((png) => png.toString("base64"));

/** The solid asked for stands there. */
const stands = (page) =>
  page.waitForFunction(() => document.querySelector("solid-panel p[role=status]")?.textContent === "");

await run({
  "each button turns, tips or cuts the solid": async () => {
    const chromium = await browser();
    const serving = await new Serving().start();
    const page = await open(chromium, serving.address);
    await to(page, "Mould");
    await settled(page);
    await page.locator("solid-panel").scrollIntoViewIfNeeded();
    await page.waitForFunction(() => document.querySelector("solid-panel canvas")?.width > 400);
    await stands(page);
    let before = await looks(page);
    for (const button of ["Turn left", "From above", "Cut open", "The mould, filled"]) {
      await page.getByRole("button", { name: button }).click();
      await page.mouse.move(0, 0);
      await stands(page);
      const after = await looks(page);
      assert.notEqual(after, before, `${button} changes nothing`);
      before = after;
    }
    await check_access(page, "the solid cut open");
    check_quiet(page);
    await chromium.close();
    await serving.end();
  },

  "without WebGL the program's drawing stands in its place": async () => {
    const chromium = await browser("--disable-3d-apis");
    const serving = await new Serving().start();
    const page = await open(chromium, serving.address);
    await to(page, "Mould");
    await settled(page);
    await page.locator("solid-panel").scrollIntoViewIfNeeded();
    const picture = page.getByAltText(/^The whole piece, drawn to scale/);
    await picture.waitFor();
    assert.ok(await picture.evaluate((img) => img.decode().then(() => img.naturalWidth > 100)));
    await check_access(page, "without WebGL");
    await chromium.close();
    await serving.end();
  },
});
