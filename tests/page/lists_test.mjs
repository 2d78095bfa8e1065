// Lists of fats and tips with what stands in their files; what was removed comes back, or is deleted for good; and what was
// ticked of an example goes on with the copy that it becomes.
import assert from "node:assert/strict";
import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import {
  browser,
  check_access,
  check_tablet,
  examples,
  on_page,
  open_in,
  run,
  saved,
  settled,
  tablet,
  to,
} from "./bench.mjs";

const chromium = await browser();
const spring = "spring_cups.run.json";
const formulas = ["meadow_base.formula.json", "cloud_topping.formula.json"];
const fats = {
  schema: "brimwright.fats/1",
  fats: [
    {
      id: "ida",
      name: "Tallow of Ida's cows",
      kind: "triglyceride",
      inci: "Adeps Bovis",
      inci_sodium_soap: "Sodium Tallowate",
      saponification_value: { low: 190, high: 202 },
      source: "butcher Ida, analysis, 3 May 2026",
    },
  ],
};
const tips = {
  schema: "brimwright.tips/2",
  title: "Of the drawer",
  tips: [{ name: "my star", star: { points: 8, outer_radius: "8 mm", inner_radius: "5.4 mm" } }],
};

const with_page = (test, files = {}, viewport = { width: 1180, height: 820 }) =>
  on_page(chromium, test, { viewport, files: { ...examples(spring, ...formulas), ...files } });
const field = (page, label) => page.getByLabel(label, { exact: true });
const press = (page, name) => page.getByRole("button", { name, exact: true }).click();
const more = (page, name) => press(page, `Name, note, copy or remove: ${name}`);
const written = async (page, serving, file, is) => {
  for (let i = 0; i < 50; ++i) {
    if (existsSync(join(serving.folder, file)) && is(serving.file(file))) return;
    await page.waitForTimeout(100);
  }
  assert.fail(JSON.stringify(serving.file(file)));
};

await run({
  "her own fats stand in their list with who uses them, are changed there, and the built-in ones are found by any name":
    () =>
      with_page(
        async (page, serving) => {
          await to(page, "Fats");
          const card = page.getByRole("region", { name: "Your own fats" }).locator(".file").first();
          assert.match(await card.innerText(), /Tallow of Ida's cows, changed/);
          await more(page, "ida.fats.json");
          await page.getByText("Used by Meadow base.").waitFor();
          await check_access(page, "fats and what is done to their file");
          await field(page, "Name of the file").fill("farm");
          await press(page, "Save");
          await page.locator(".file-name", { hasText: "farm.fats.json" }).waitFor();
          assert.equal(serving.file(formulas[0]).own_fats, "farm.fats.json");

          await page.getByRole("button", { name: /^farm\.fats\.json/ }).click();
          await page.getByRole("heading", { name: "In farm.fats.json" }).waitFor();
          await page.locator("summary", { hasText: "Tallow of Ida's cows190 to 202 mg KOH/g" }).click();
          await field(page, "Highest").fill("201");
          await written(page, serving, "farm.fats.json", (file) => file.fats[0].saponification_value.high === 201);
          await page.locator(".steps button", { hasText: "Undo" }).click();
          await written(page, serving, "farm.fats.json", (file) => file.fats[0].saponification_value.high === 202);
          assert.ok(
            await page.locator(".steps button", { hasText: "Undo" }).isDisabled(),
            "no step of the run is taken back",
          );
          await page.locator(".steps button", { hasText: "Redo" }).click();
          await written(page, serving, "farm.fats.json", (file) => file.fats[0].saponification_value.high === 201);

          await field(page, "A new fat of your own, by name").fill("Lard, Bero");
          await press(page, "Add it to farm.fats.json");
          await field(page, "The document").last().fill("farm Bero, 2026");
          await written(page, serving, "farm.fats.json", (file) => file.fats[1]?.source === "farm Bero, 2026");
          assert.deepEqual(
            [serving.file("farm.fats.json").fats[1].id, serving.file("farm.fats.json").fats[1].name],
            ["lard_bero", "Lard, Bero"],
          );
          await check_access(page, "a fat half said");
          await page.getByRole("button", { name: "Remove Lard, Bero" }).click();
          await written(page, serving, "farm.fats.json", (file) => file.fats.length === 1);

          await field(page, "Find by any name").fill("cocos");
          const rows = page.getByRole("region", { name: "Built-in fats and their figures" }).locator("tbody tr");
          const coconut = serving.printed("list", "fats", "coconut").fats[0];
          const { low, high } = coconut.saponification_value_mg_koh_per_g;
          assert.match(
            await rows.first().innerText(),
            new RegExp(`${coconut.name}[\\s\\S]*${low} to ${high}[\\s\\S]*${coconut.inci}`),
          );
          await page.setViewportSize(tablet);
          await check_tablet(page, "the list of fats");
        },
        {
          "ida.fats.json": fats,
          [formulas[0]]: { ...examples(formulas[0])[formulas[0]], own_fats: "ida.fats.json" },
        },
      ),

  "her own tips stand in their list with their pictures, a new one gets a file, and the built-in ones their openings":
    () =>
      with_page(
        async (page, serving) => {
          await to(page, "Tips");
          const card = page.getByRole("region", { name: "Your own tips" }).locator(".file").first();
          assert.match(await card.innerText(), /Of the drawer\nmy star/);
          await card.locator(".open").click();
          await page.locator("svg.tip path").waitFor();
          await field(page, "A new tip of your own, by name").fill("wide");
          await press(page, "Add it to drawer.tips.json");
          await press(page, "Round");
          await field(page, "Radius of the opening").fill("6");
          await written(page, serving, "drawer.tips.json", (file) => file.tips[1]?.round?.radius === "6 mm");
          await page.locator("svg.tip circle").waitFor();
          const called = field(page, "What you call the tip").last();
          await called.fill("my star");
          await called.press("Enter");
          await page.getByText("Another is called my star already").waitFor();
          await called.fill("wide round");
          await called.press("Enter");
          await written(page, serving, "drawer.tips.json", (file) => file.tips[1]?.name === "wide round");
          await check_access(page, "tips of her own");
          const tip = serving.printed("list", "tips").tips[0];
          const row = page.getByRole("region", { name: "Built-in tips" }).locator("tbody tr").first();
          assert.ok((await row.innerText()).includes(tip.name) && (await row.innerText()).includes(tip.opening));
          await more(page, "Of the drawer");
          await field(page, "Name").fill("Drawer two");
          await press(page, "Save");
          await page.locator(".file b", { hasText: "Drawer two" }).waitFor();
          assert.equal(serving.file("drawer.tips.json").title, "Drawer two");
          await page.setViewportSize({ width: 390, height: 844 });
          assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), 390);
        },
        { "drawer.tips.json": tips },
      ),

  "what was removed comes back after a reload too, and is deleted for good only when she says so twice": () =>
    with_page(
      async (page, serving) => {
        await to(page, "Formulas");
        for (const name of ["One", "Two"]) {
          await more(page, name);
          await press(page, "Remove");
          await page.locator(".told", { hasText: `Removed ${name}.` }).waitFor();
        }
        await page.reload();
        await page.locator("details.removed summary", { hasText: "Removed, and kept still: 2" }).click();
        await check_access(page, "what was removed");
        await press(page, "Bring back One");
        await page.locator(".file b", { hasText: "One" }).waitFor();
        assert.equal(serving.file("one.formula.json").name, "One");
        await page.locator(".steps button", { hasText: "Undo" }).click();
        await page.locator(".file b", { hasText: /^One$/ }).waitFor({ state: "detached" });
        await page.locator(".steps button", { hasText: "Redo" }).click();
        await page.locator(".file b", { hasText: /^One$/ }).waitFor();
        await press(page, "Delete Two ...");
        await press(page, "Keep it");
        await press(page, "Delete Two ...");
        await press(page, "Delete Two for good");
        await page.locator("details.removed").waitFor({ state: "detached" });
        assert.ok(!existsSync(join(serving.folder, "two.formula.json")));
        assert.deepEqual(readdirSync(join(serving.folder, ".brimwright", "removed")), []);
      },
      Object.fromEntries(
        ["One", "Two"].map((name) => [
          `${name.toLowerCase()}.formula.json`,
          { ...examples(formulas[0])[formulas[0]], name },
        ]),
      ),
    ),

  "what was ticked of an example goes on with the copy that its first change makes of it": () =>
    on_page(
      chromium,
      async (page, serving) => {
        await to(page, "Weigh");
        await settled(page);
        const box = (of, i) => of.locator(".weighing .weigh input").nth(i);
        await box(page, 0).check();
        await page.locator(".weigh.done:not(.waiting)").waitFor();
        await to(page, "Set up");
        await field(page, "Pieces to sell").fill("45");
        await saved(page);
        assert.ok(existsSync(join(serving.folder, spring)));
        await to(page, "Weigh");
        await settled(page);
        assert.ok(await box(page, 0).isChecked(), "the copy goes on");
        await box(page, 1).check();
        await page.locator(".weigh.done:not(.waiting)").nth(1).waitFor();
        const other = await open_in(page.context(), serving.address, "Weigh");
        await settled(other);
        await other.locator(".weigh.done").nth(1).waitFor();
        await to(other, "Runs");
        await other
          .getByRole("region", { name: "Examples" })
          .getByRole("button", { name: /^Spring cups/ })
          .first()
          .click();
        await other.locator(".weighing .weigh").first().waitFor();
        await settled(other);
        assert.equal(await other.locator(".weigh.done").count(), 0, "the example is as it came");
        await other.close();
      },
      { viewport: { width: 1180, height: 820 } },
    ),
});

await chromium.close();
