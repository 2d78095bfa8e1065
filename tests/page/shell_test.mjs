// What stands around every view: the way there and back, undo, whether it is saved, and what calls for her.
import assert from "node:assert/strict";
import { browser, check_access, examples, on_page, run, saved, settled, tablet, to } from "./bench.mjs";

const chromium = await browser();

const desk = { width: 1180, height: 820 };
const phone = { width: 390, height: 844 };
const spring = () => examples("spring_cups.run.json", "meadow_base.formula.json", "cloud_topping.formula.json");

const with_page = (test, viewport = desk, files = spring()) => on_page(chromium, test, { files, viewport });

const field = (page, label) => page.getByLabel(label, { exact: true });
const here = (page) => page.locator(".rail nav button[aria-current]").innerText();
const place = (page) => decodeURIComponent(new URL(page.url()).hash);
const comes_to = (page, address) => page.waitForFunction((hash) => decodeURIComponent(location.hash) === hash, address);

await run({
  "Back goes back through lists, a run's views and a formula, and Forward forward": () =>
    with_page(async (page) => {
      await to(page, "Print");
      await to(page, "Formulas");
      await page.getByRole("button", { name: /^Dual-lye cream/ }).click();
      await page.getByRole("heading", { name: "Dual-lye cream", level: 1 }).waitFor();
      const way = [
        "#weigh/spring_cups.run.json",
        "#set-up/spring_cups.run.json",
        "#print/spring_cups.run.json",
        "#formulas",
        "#formula/examples/twin_lye.formula.json",
      ];
      for (const address of way.slice(0, -1).reverse()) {
        await page.goBack();
        await comes_to(page, address);
        await page.locator("h1").waitFor();
      }
      assert.match(await here(page), /^Weigh/);
      for (const address of way.slice(1)) {
        await page.goForward();
        await comes_to(page, address);
      }
      await page.getByRole("heading", { name: "Dual-lye cream", level: 1 }).waitFor();
    }),

  "focus and scrolling return with Back": () =>
    with_page(async (page) => {
      const change = page.getByRole("button", { name: "Change the formula of the base", exact: true });
      await change.scrollIntoViewIfNeeded();
      const scroll = await page.evaluate(() => scrollY);
      await change.click();
      await page.waitForFunction(() => document.activeElement.id === "formula-title");
      assert.equal(await page.evaluate(() => scrollY), 0, "a place that is gone to begins at its top");
      await page.goBack();
      await page.waitForFunction(() => document.activeElement.ariaLabel === "Change the formula of the base");
      assert.ok(Math.abs((await page.evaluate(() => scrollY)) - scroll) <= 2);
    }, phone),

  "the address holds the view and never the key, and a reload stays where it was": () =>
    with_page(async (page, serving) => {
      const key = new URL(serving.address).hash.slice(1);
      for (const view of ["Weigh", "Set up", "Cautions", "Piece", "Mould", "Print", "Runs", "Formulas", "Moulds"]) {
        await to(page, view);
        assert.ok(!page.url().includes(key), view);
        const before = place(page);
        await page.reload();
        await page.locator(".rail nav button[aria-current]").waitFor();
        assert.equal(place(page), before);
        assert.equal(await here(page).then((words) => words.split("\n")[0].trim()), view);
      }
    }),

  "the copy that an example becomes is one place with it: Back does not lead to the example again": () =>
    with_page(
      async (page) => {
        await field(page, "Pieces to sell").fill("30");
        await saved(page);
        await to(page, "Print");
        await page.goBack();
        await comes_to(page, "#set-up/spring_cups.run.json");
        await page.goBack();
        await comes_to(page, "#weigh/spring_cups.run.json");
        assert.match(await page.locator(".saving").innerText(), /Saved in spring_cups\.run\.json/);
      },
      desk,
      {},
    ),

  "a rail stands at the side where there is room, and a bar at the foot where there is none": async () => {
    for (const [viewport, is_rail] of [
      [desk, true],
      [{ width: 1440, height: 900 }, true],
      [{ width: 820, height: 1180 }, false],
      [phone, false],
    ])
      await with_page(async (page) => {
        const box = await page.locator(".bar").boundingBox();
        if (is_rail) assert.ok(box.x + box.width < 240, JSON.stringify(box));
        else assert.ok(Math.abs(box.y + box.height - viewport.height) < 1.5 && box.width === viewport.width);
        for (const one of await page.locator(".rail button").all()) {
          const { width, height } = await one.boundingBox();
          assert.ok(width >= 43.9 && height >= 43.9, `${await one.innerText()}: ${width} x ${height}`);
        }
        const cut = await page
          .locator(".bar .rail-views button > span, .steps button > span")
          .evaluateAll((all) =>
            all.filter((one) => one.scrollWidth > one.parentElement.clientWidth + 1).map((one) => one.textContent),
          );
        assert.deepEqual(cut, [], "words are cut off");
        assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), viewport.width);
        await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
        assert.ok(await page.getByRole("button", { name: "Undo" }).isVisible());
        await check_access(page, `at ${viewport.width}`);
      }, viewport);
  },

  "what is missing is marked by words on the way to it, and the way leads into the field": () =>
    with_page(async (page) => {
      await field(page, "Below brim").fill("6 mn");
      await page.locator(".lane.pour .complaint").waitFor();
      await to(page, "Cautions");
      assert.match(await page.locator(".bar button", { hasText: "Set up" }).innerText(), /missing/);
      await page.getByRole("button", { name: "Go to the field" }).click();
      await page.waitForFunction(() => document.activeElement.id === "f-run-pour-line-below_brim");
      await field(page, "Below brim").fill("6 mm");
      await settled(page);
      assert.doesNotMatch(await page.locator(".bar button", { hasText: "Set up" }).innerText(), /missing/);
    }),

  "Undo stands on every view of a run and takes back what was typed on another": () =>
    with_page(async (page, serving) => {
      await field(page, "Pieces to sell").fill("30");
      await saved(page);
      for (const view of ["Weigh", "Cautions", "Piece", "Mould", "Print"]) {
        await to(page, view);
        await page.getByRole("button", { name: "Undo" }).click();
        await saved(page);
        assert.equal(serving.file("spring_cups.run.json").sell, 46, view);
        await page.getByRole("button", { name: "Redo" }).click();
        await page.waitForFunction(() => document.querySelector(".steps button:last-child").disabled);
        await saved(page);
        assert.equal(serving.file("spring_cups.run.json").sell, 30, view);
      }
    }),

  "on a tablet the bar covers nothing that the keyboard comes to": () =>
    with_page(async (page) => {
      for (let i = 0; i < 60; ++i) {
        await page.keyboard.press("Tab");
        const hidden = await page.evaluate(() => {
          const node = document.activeElement;
          const box = node.getBoundingClientRect();
          const bar = document.querySelector(".bar").getBoundingClientRect();
          return node.closest(".rail") === null && box.height < 300 && box.top < bar.bottom && box.bottom > bar.top + 1;
        });
        assert.ok(!hidden, await page.evaluate(() => document.activeElement.outerHTML.slice(0, 120)));
      }
    }, tablet),
});
await chromium.close();
