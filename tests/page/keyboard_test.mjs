// By keyboard alone: from the address to changed weights, with the focus always seen and never caught.
import assert from "node:assert/strict";
import { browser, figure, on_page, run, settled } from "./bench.mjs";

const chromium = await browser();
const most_stops = 400;

const focused = (page) =>
  page.evaluate(() => {
    const node = document.activeElement;
    const label = node.labels?.[0]?.innerText ?? node.getAttribute("aria-label") ?? node.innerText ?? "";
    const style = getComputedStyle(node);
    return {
      label: label.replace(/\s+/g, " ").trim(),
      outline: Number.parseFloat(style.outlineWidth),
      tag: node.tagName,
    };
  });

async function tab_to(page, label) {
  for (let i = 0; i < most_stops; ++i) {
    await page.keyboard.press("Tab");
    const at = await focused(page);
    if (at.label.startsWith(label)) return at;
  }
  throw new Error(`the Tab key never comes to ${label}`);
}

await run({
  "figures are changed, asked and taken back by keyboard alone": () =>
    on_page(chromium, async (page) => {
      await page.locator(".skip").focus();
      assert.equal((await focused(page)).label, "Skip to the figures");
      await page.keyboard.press("Enter");
      assert.equal(new URL(page.url()).hash, "#set-up/examples/spring_cups.run.json");
      await tab_to(page, "Pieces to sell");
      await page.keyboard.press("Control+A");
      await page.keyboard.type("20");
      await settled(page);
      assert.equal(await figure(page, "Pieces to make"), 21); // 20 / 0.96 = 20.8, rounded up
      await tab_to(page, "Pieces to make");
      await page.keyboard.press("Enter");
      await page.locator(".sum").waitFor();
      await page.keyboard.press("Control+Z");
      await settled(page);
      assert.equal(await figure(page, "Pieces to make"), 48);
    }),

  "the Tab key goes through everything and out again, and every stop is seen": () =>
    on_page(chromium, async (page) => {
      await page.locator(".skip").focus();
      const all = await page.evaluate(
        () =>
          [...document.querySelectorAll("button, input, select, summary, [tabindex='0']")].filter(
            (node) => !node.disabled && node.checkVisibility(),
          ).length,
      );
      let stops = 1; // the skip link itself
      for (; stops < most_stops; ++stops) {
        await page.keyboard.press("Tab");
        const at = await focused(page);
        if (at.tag === "BODY") break;
        assert.ok(at.outline >= 2, `${at.label} shows no focus`);
      }
      assert.equal(stops, all);
    }),
});
await chromium.close();
