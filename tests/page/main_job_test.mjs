// The main job by clicks, from an empty folder; the figures are the command line's own.
import assert from "node:assert/strict";
import {
  begin_run,
  browser,
  check_access,
  check_tablet,
  figure,
  first_batch,
  on_page,
  open_all,
  open_run,
  opened,
  printed_rows,
  root,
  run,
  saved,
  settled,
  tablet,
  to,
  weighed_rows,
} from "./bench.mjs";

const chromium = await browser();

const with_page = (test, viewport) => on_page(chromium, test, { viewport });

const field = (page, label) => page.getByLabel(label, { exact: true });

/** Every weight of a batch is the one that the command line prints for it. */
async function check_figures(page, plan) {
  const batch = first_batch(plan);
  assert.deepEqual((await weighed_rows(page)).sort(), printed_rows(batch).sort());
  await to(page, "Set up");
  const tenth = 0.05 + 1e-9; // sums, which nobody weighs, are shown to a tenth of a gram
  assert.ok(Math.abs((await figure(page, "Base to make")) - batch.pour.make_g) <= tenth);
  if (batch.pipe) assert.ok(Math.abs((await figure(page, "Topping to make")) - batch.pipe.make_g) <= tenth);
  assert.equal(await figure(page, "Pieces to make"), plan.pieces.make);
}

await run({
  "an empty folder opens on a shipped run with every figure of the command line": () =>
    with_page(async (page, serving) => {
      await check_figures(page, serving.printed("plan", `${root}/examples/spring_cups.run.json`));
      for (const lane of ["Pour", "Pipe", "Decorate"])
        await page.getByRole("heading", { name: lane, exact: true }).waitFor();
      assert.match(await page.locator(".order").first().innerText(), /Pour to 6 mm .* below the brim, 68\.0 g/);
      await check_access(page, "a shipped run");
    }),

  "the weights are the largest type, 28 px at least": () =>
    with_page(async (page) => {
      const sizes = await page.evaluate(() => {
        const of = (nodes) => [...nodes].map((node) => Number.parseFloat(getComputedStyle(node).fontSize));
        return {
          weights: of(document.querySelectorAll(".value.large b")),
          rest: of(document.querySelectorAll("main p, main input, main h2, main td, main small")),
        };
      });
      assert.ok(Math.min(...sizes.weights) >= 28);
      assert.ok(Math.max(...sizes.rest) < Math.min(...sizes.weights));
    }, tablet),

  "on a tablet whatever is tapped is 44 px high and wide, and nothing sticks out": () =>
    with_page(async (page) => {
      await open_all(page);
      for (const figure of (await page.locator(".figure button").all()).slice(0, 12)) await figure.click();
      await check_tablet(page, "a run with all its parts open");
      for (const view of ["Weigh", "Cautions", "Piece", "Mould", "Print", "Runs", "Formulas", "Moulds"]) {
        await to(page, view);
        await check_tablet(page, view);
      }
      for (const way of ["By its inside measures", "From a mesh file", "By measures and weighed water"]) {
        await page.getByRole("button", { name: way }).click();
        await check_tablet(page, way);
        await to(page, "Moulds");
      }
    }, tablet),

  "losses, trials, layers and decorations each change what is weighed as the command line says": () =>
    with_page(async (page, serving) => {
      await field(page, "Base: left in the pot").fill("40");
      await field(page, "Trial 2").fill("26 g");
      await page.getByRole("button", { name: "One part more of Plain" }).click();
      await field(page, "Left in the jug per tray fill").fill("0,5 oz");
      await field(page, "Fine scale, smallest step").fill("0.01 g");
      await settled(page);
      await saved(page);
      const plan = serving.printed("plan", "spring_cups.run.json");
      await check_figures(page, plan);
      assert.ok(Math.abs((await figure(page, "Rose", ".lane.pour")) - first_batch(plan).pour.layers[0].g) < 0.051); // shown to a tenth
      assert.equal(await figure(page, "Melt of"), plan.decorations[0].make_g);
    }),

  "a topping added to plain bars asks for one thing after the other and guesses nothing": () =>
    with_page(async (page, serving) => {
      await open_run(page, /^Plain bars/, "Set up");
      await page.getByRole("button", { name: "Add a topping" }).click();
      await page.locator(".needed").waitFor();
      await check_access(page, "a topping half said");
      await field(page, "Topping").selectOption({ label: "Meadow base" });
      await page.getByRole("button", { name: "Weigh trials piped on paper" }).click();
      await field(page, "Trial 1").fill("20 g");
      await field(page, "Weigh-cup of the trials, net").fill("80 g");
      await field(page, "Cup holds").first().fill("120 ml");
      await page.getByRole("button", { name: "Not at all, 0 %" }).click();
      await field(page, "Weigh-cup, net").fill("80 g");
      await field(page, "Cup holds").last().fill("120 ml");
      await field(page, "Topping: left in the bag").fill("30 g");
      await field(page, "Topping: left in bowl and whisk").fill("30 g");
      await settled(page);
      await saved(page);
      const plan = serving.printed("plan", "plain_bars.run.json");
      assert.equal(plan.pipe.volume_each_ml, 30); // 20 g of a whip of 80 g in 120 ml
      assert.equal(await figure(page, "Topping to make"), first_batch(plan).pipe.make_g);
    }),

  "typing changes every figure, and a copy of the example is saved": () =>
    with_page(async (page, serving) => {
      await field(page, "Pieces to sell").fill("30");
      await field(page, "Below brim").fill("8 mm");
      await settled(page);
      await saved(page);
      assert.equal(serving.file("spring_cups.run.json").sell, 30);
      assert.deepEqual(serving.file("spring_cups.run.json").pour.line, { below_brim: "8 mm" });
      await check_figures(page, serving.printed("plan", "spring_cups.run.json"));
    }),

  "the line moves by button, by key, by drag and by number, half a millimetre true": () =>
    with_page(async (page) => {
      const line = field(page, "Below brim");
      await page.getByRole("button", { name: "Pour line 1 mm lower" }).click();
      assert.equal(await line.inputValue(), "7 mm");
      const handle = page.getByRole("slider", { name: "Pour line below the brim" });
      await handle.focus();
      await page.keyboard.press("ArrowUp");
      assert.equal(await line.inputValue(), "6 mm");
      const box = await handle.boundingBox();
      const drawing = await page.locator(".lane.pour svg").first().boundingBox();
      await page.mouse.move(box.x + 20, box.y + 20);
      await page.mouse.down();
      await page.mouse.move(box.x + 20, box.y + 20 + drawing.height / 10);
      await page.mouse.up();
      assert.ok(Number.parseFloat(await line.inputValue()) > 8);
      await line.fill("9");
      await line.blur();
      assert.equal(await line.inputValue(), "9 mm");
      await settled(page);
    }),

  "the level curve is drawn to the brim and told in a table, and its dashed line follows the pour line": () =>
    with_page(async (page, serving) => {
      await to(page, "Mould");
      const curve = page.getByRole("img", { name: /^Level curve/ });
      assert.match(await curve.getAttribute("aria-label"), /pour line at 30 millimetres$/);
      const [, last_x, last_y] = /L([\d.]+) ([\d.]+)$/.exec(await curve.locator(".curve").getAttribute("d"));
      const grid = await curve.locator(".grid").evaluateAll((all) =>
        all.map((one) => {
          const { x, y, width } = one.getBBox();
          return { x, y, width };
        }),
      );
      assert.equal(Number(last_x), Math.max(...grid.map((one) => one.x + one.width)), "it ends at the right edge");
      assert.equal(Number(last_y), Math.min(...grid.map((one) => one.y)), "and at the top: the brim");
      const line_at = () => curve.locator(".pour-line").evaluate((one) => one.getBBox().x);
      const before = await line_at();
      await to(page, "Set up");
      await page.getByRole("button", { name: "Pour line 1 mm lower" }).click();
      await settled(page);
      await to(page, "Mould");
      const millimetre = (Number(last_x) - (await curve.locator(".curve").evaluate((one) => one.getBBox().x))) / 36;
      assert.ok(Math.abs(before - (await line_at()) - millimetre) < 0.2, "it moves by a millimetre of the axis");

      await page.getByText("The curve as a table").click();
      const rows = await page.locator(".levels tbody tr").allInnerTexts();
      for (const row of rows) {
        const [depth, volume] = row.split(/\s+/).map(Number);
        const { pockets } = serving.printed("gauge", `${root}/moulds/twisted_cup.json`, "--depth", `${depth} mm`);
        const { volume_ml, ml_per_mm } = pockets[0].levels[0];
        assert.ok(Math.abs(volume - volume_ml) < 0.05 * ml_per_mm + 0.05, row); // depths are shown to a tenth
      }
      assert.ok(rows.length >= 6);
      await check_access(page, "the level curve as a table");
    }),

  "what the program refuses stands beside its field, and old figures are struck through": () =>
    with_page(async (page, serving) => {
      const before = await figure(page, "Base to make");
      await field(page, "Below brim").fill("6 mn");
      const said = page.locator(".lane.pour .complaint");
      await said.waitFor();
      assert.match(await said.innerText(), /6 mn/);
      assert.equal(await figure(page, "Base to make"), before);
      assert.ok(await page.locator(".value.old").count());
      assert.equal(await field(page, "Below brim").getAttribute("aria-invalid"), "true");
      await check_access(page, "a refusal");
      await field(page, "Below brim").fill("5 mm");
      await settled(page);
      await saved(page);
      assert.equal(
        await figure(page, "Base to make"),
        first_batch(serving.printed("plan", "spring_cups.run.json")).pour.make_g,
      );
    }),

  "undo and redo take a thought back and bring it again": () =>
    with_page(async (page) => {
      const sell = field(page, "Pieces to sell");
      await sell.fill("20");
      await settled(page);
      await page.getByRole("button", { name: "Undo" }).click();
      await settled(page);
      assert.equal(await sell.inputValue(), "46");
      assert.equal(await figure(page, "Pieces to make"), 48);
      await page.getByRole("button", { name: "Redo" }).click();
      assert.equal(await sell.inputValue(), "20");
    }),

  "superfat is typed into a copy of the formula, and both files agree with the command line": () =>
    with_page(async (page, serving) => {
      await page.locator(".jug").first().getByLabel("Planned superfat").fill("8");
      await settled(page);
      await saved(page);
      assert.equal(serving.file("meadow_base.formula.json").superfat, "8 %");
      const plan = serving.printed("plan", "spring_cups.run.json");
      assert.equal(plan.pour.superfat_percent.aim, 8);
      await check_figures(page, plan);
    }),

  "the headspace is answered with a picture": () =>
    with_page(async (page, serving) => {
      await page.getByRole("button", { name: "Half, 50 %" }).click();
      await settled(page);
      await saved(page);
      const plan = serving.printed("plan", "spring_cups.run.json");
      assert.equal(await figure(page, "Topping to make"), first_batch(plan).pipe.make_g);
      assert.equal(serving.file("spring_cups.run.json").pipe.fills_headspace, "50 %");
    }),

  "a figure opens its arithmetic in place, with what went into it and where it is from": () =>
    with_page(async (page, serving) => {
      const { ingredients } = first_batch(serving.printed("plan", `${root}/examples/spring_cups.run.json`)).pour;
      const grams = (name) => ingredients.find((one) => one.name.startsWith(name)).g_text;
      await to(page, "Weigh");
      await page.getByRole("button", { name: "How the weight of NaOH, 99 % pure is calculated" }).first().click();
      await page.locator(".sum .formula").first().waitFor();
      assert.match(
        await page.locator(".sum").first().innerText(),
        new RegExp(
          `saponification value[\\s\\S]*${grams("Olive")} g[\\s\\S]* = ${grams("NaOH")} g[\\s\\S]*(Codex|CXS)`,
        ),
      );
      await to(page, "Set up");
      for (const [words, said] of [
        ["How the heat is worked out", /Olsson/],
        ["How the fit is measured", /pressed in/],
      ]) {
        assert.match(await opened(page.locator(".figure", { hasText: words }).first()), said);
      }
      const shut = page.locator("main .figure button[aria-expanded=false]");
      while (await shut.count()) await shut.first().click();
      await settled(page);
      const figures = page.locator("main .figure");
      const told = page.locator("main .figure", { has: page.locator(".sum .formula") });
      assert.ok((await figures.count()) > 20);
      assert.equal(await told.count(), await figures.count(), "every figure says how it came about");
      await check_access(page, "open arithmetic");
    }),

  "ounces stand alone where they are chosen, and still say of what": () =>
    with_page(async (page) => {
      await page.getByRole("button", { name: "oz, in" }).click();
      assert.match(await page.locator(".order").first().innerText(), /1\/4 in below the brim, 2\.397 oz each/);
      await check_access(page, "US units");
    }),

  "three taps and two figures lead from a mould of the catalogue to a run with its weights": () =>
    with_page(async (page, serving) => {
      await to(page, "Moulds");
      await check_access(page, "the moulds");
      await page.getByRole("button", { name: /^Low bowl/ }).click();
      await check_access(page, "the choice of a formula");
      await begin_run(page);
      await page.getByRole("heading", { name: "Low bowl", level: 1 }).waitFor();
      await settled(page);
      await saved(page);
      await check_figures(page, serving.printed("plan", "low_bowl.run.json"));
      await check_access(page, "a run of pour alone");
    }),
});
await chromium.close();
