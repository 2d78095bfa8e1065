// What stands ready in the studio, lye solutions and blends of fats: typed there, taken by a run and weighed as the
// command line has it; and goods of another make that serve as a material.
import assert from "node:assert/strict";
import {
  browser,
  check_access,
  check_tablet,
  examples,
  first_batch,
  on_page,
  printed_rows,
  run,
  saved,
  settled,
  tablet,
  to,
  weighed_rows,
} from "./bench.mjs";

const chromium = await browser();
const bars = "plain_bars.run.json";
const formulas = ["meadow_base.formula.json", "twin_lye.formula.json"];
const { money } = examples("spring_cups.run.json")["spring_cups.run.json"];
const bare = examples(bars)[bars];
const jug = { alkali: "NaOH", strength: "50 %", strength_range: ["49 %", "51 %"], kept_at: "18 °C" };

const with_page = (test, studio = {}, more = {}, viewport = { width: 1180, height: 820 }) =>
  on_page(chromium, test, {
    viewport,
    files: {
      ...examples(...formulas),
      [bars]: bare,
      "studio.json": { schema: "brimwright.studio/1", ...studio },
      ...more,
    },
  });
const field = (page, label) => page.getByLabel(label, { exact: true });
const press = (page, name) => page.getByRole("button", { name, exact: true }).click();
const unfold = (page, words) => page.locator("summary", { hasText: words }).click();

/** The studio's file, once it holds what is typed. */
async function written(page, serving) {
  await settled(page);
  await saved(page);
  return serving.file("studio.json");
}

async function is_weighed_as_printed(page, serving) {
  const rows = await weighed_rows(page);
  assert.deepEqual(rows, printed_rows(first_batch(serving.printed("plan", bars))));
  return rows.map(([name]) => name);
}

await run({
  "a lye solution is typed with its alkali, strength and range, and weighed in place of dry alkali": () =>
    with_page(async (page, serving) => {
      await to(page, "Set up");
      await unfold(page, "Lye solutions");
      await field(page, "Another solution, such as Lye jug A").fill("Lye jug A");
      await press(page, "Add the solution");
      await check_access(page, "a solution half said");
      const one = page.getByRole("group", { name: "Lye jug A", exact: true });
      assert.equal(await one.locator("[aria-pressed=true]").count(), 0, "no alkali is guessed");
      await press(page, "NaOH, sodium hydroxide");
      await field(page, "Strength: pure NaOH in 100 g of the solution").fill("50");
      await one.getByText("So 50 g of pure NaOH and 50 g of water in 100 g.").waitFor();
      await field(page, "as weak as").fill("49");
      await field(page, "or as strong as").fill("51");
      await field(page, "Coldest it stands").fill("18 °C");
      await press(page, "I dissolve it myself");
      await field(page, "Purity of the dry NaOH").fill("99");
      assert.deepEqual((await written(page, serving)).lye_solutions, {
        "Lye jug A": { ...jug, made_from: { purity: "99 %" } },
      });

      await unfold(page, "From what stands ready");
      await press(page, "Lye jug A: NaOH 50 %");
      await saved(page);
      assert.equal(serving.file(bars).pour.lye_from, "Lye jug A");
      const names = await is_weighed_as_printed(page, serving);
      assert.ok(
        names.some((name) => name.includes("Lye jug A")),
        names.join(),
      );
      await to(page, "Set up");
      await field(page, "What you call it").fill("Blue jug");
      await field(page, "What you call it").press("Tab");
      await settled(page);
      await saved(page);
      assert.equal(serving.file(bars).pour.lye_from, "Blue jug", "the run goes by the new name");
      assert.deepEqual(Object.keys(serving.file("studio.json").lye_solutions), ["Blue jug"]);
      await page.getByRole("button", { name: /Blue jug: NaOH 50 %$/ }).click(); // pressed, its name has a tick before it
      await settled(page);
      await saved(page);
      assert.equal(serving.file(bars).pour.lye_from, undefined);
    }),

  "only solutions of the formula's own alkali are offered, of two alkalis one each": () =>
    with_page(
      async (page, serving) => {
        await to(page, "Set up");
        await unfold(page, "From what stands ready");
        assert.equal(await page.getByRole("button", { name: /KOH jug/ }).count(), 0);
        await page.getByText("Of another alkali than this formula's: KOH jug: KOH 45 %.").waitFor();
        await field(page, "Base").selectOption("twin_lye.formula.json");
        await press(page, "KOH jug: KOH 45 %");
        await press(page, "NaOH jug: NaOH 50 %");
        await press(page, "Second jug: NaOH 45 %");
        await settled(page);
        await saved(page);
        assert.deepEqual(
          serving.file(bars).pour.lye_from,
          ["KOH jug", "Second jug"],
          "the second takes the first one's place",
        );
        await check_access(page, "solutions chosen");
      },
      {
        lye_solutions: {
          "NaOH jug": jug,
          "Second jug": { ...jug, strength: "45 %", strength_range: ["44 %", "46 %"] },
          "KOH jug": { ...jug, alkali: "KOH", strength: "45 %", strength_range: ["44 %", "46 %"] },
        },
      },
    ),

  "what is wrong with a solution that a run takes stands at its field": () =>
    with_page(
      async (page) => {
        await to(page, "Set up");
        await field(page, "Strength: pure NaOH in 100 g of the solution").waitFor(); // it stands open by itself
        await page.locator(".complaint", { hasText: "stronger than lye is weighed" }).waitFor();
        await field(page, "Strength: pure NaOH in 100 g of the solution").fill("1:1");
        await page.locator(".complaint", { hasText: "is a ratio, which may be read both ways" }).waitFor();
        await field(page, "Strength: pure NaOH in 100 g of the solution").fill("50 %");
        await settled(page);
        assert.equal(await page.locator(".complaint").count(), 0);
      },
      { lye_solutions: { "Lye jug A": { ...jug, strength: "60 %" } } },
      { [bars]: { ...bare, pour: { ...bare.pour, lye_from: "Lye jug A" } } },
    ),

  "a blend is typed until its shares make a whole, and weighed in place of its fats": () =>
    with_page(async (page, serving) => {
      await to(page, "Set up");
      await unfold(page, "Melted blends of fats");
      await field(page, "Another blend, such as Hard fats").fill("Hard fats");
      await press(page, "Add the blend");
      const one = page.getByRole("group", { name: "Hard fats", exact: true });
      await one.getByRole("button", { name: "Coconut oil", exact: true }).click();
      await page.keyboard.type("70");
      await one.getByText(/70 %: 30 % are missing/).waitFor();
      await one.getByRole("button", { name: "Cocoa butter", exact: true }).click();
      await page.keyboard.type("30");
      await one.getByText("Its fats add to 100 %.").waitFor();
      await check_access(page, "a blend");
      const { blends } = await written(page, serving);
      assert.deepEqual(
        blends["Hard fats"].fats.map(({ share }) => share),
        ["70 %", "30 %"],
      );
      await unfold(page, "From what stands ready");
      await press(page, "Hard fats");
      await settled(page);
      await saved(page);
      assert.equal(serving.file(bars).pour.blend, "Hard fats");
      const names = await is_weighed_as_printed(page, serving);
      assert.ok(
        names.some((name) => name.includes("Hard fats")),
        names.join(),
      );
      await to(page, "Set up");
      await press(page, "Take a share of my own");
      await field(page, "Hard fats: share of all fats of the formula").fill("10");
      await settled(page);
      await saved(page);
      assert.deepEqual(serving.file(bars).pour.blend, { name: "Hard fats", share: "10 %" });
      await field(page, "Hard fats: share of all fats of the formula").fill("99");
      await page.locator(".complaint", { hasText: "take at most" }).waitFor();
      await press(page, "None: each fat by itself");
      await settled(page);
      await saved(page);
      assert.equal(serving.file(bars).pour.blend, undefined);
    }),

  "goods of another make serve as a material, and another fat does not": () =>
    with_page(
      async (page, serving) => {
        await to(page, "Set up");
        await page.locator(".of-studio summary", { hasText: /^Packs/ }).click();
        const packs = page.getByRole("group", { name: "Packs of Goldmill olive", exact: true });
        await packs.getByLabel("Another make of").selectOption({ label: "Olive oil" });
        assert.deepEqual((await written(page, serving)).serves_as, { "Goldmill olive": "olive" });
        await packs.getByLabel("Another make of").selectOption({ label: "Coconut oil" });
        await packs.locator(".complaint").waitFor();
        await check_access(page, "another fat");
        await packs.getByLabel("Another make of").selectOption({ label: "nothing: a material of its own" });
        assert.equal((await written(page, serving)).serves_as, undefined);
      },
      {
        currency: money.currency,
        prices: money.prices,
        packs: { "Goldmill olive": [{ holds: "5 kg", paid: "40.00" }] },
      },
    ),

  "nothing of it is too small for a finger, nor sticks out": () =>
    with_page(
      async (page) => {
        await to(page, "Set up");
        await unfold(page, "Lye solutions");
        await unfold(page, "Melted blends of fats");
        await unfold(page, "From what stands ready");
        await settled(page);
        await check_tablet(page, "what stands ready");
      },
      {
        lye_solutions: { "Lye jug A": jug },
        blends: {
          "Hard fats": {
            fats: [
              { fat: "coconut", share: "70 %" },
              { fat: "cocoa_butter", share: "30 %" },
            ],
          },
        },
      },
      {},
      tablet,
    ),
});
await chromium.close();
