// Decorations, dust and cutting put into runs that have none, by clicks; the figures are the command line's own.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import {
  begin_run,
  browser,
  check_access,
  check_tablet,
  figure,
  fill,
  first_batch,
  on_page,
  root,
  run,
  saved,
  settled,
  tablet,
  to,
} from "./bench.mjs";

const chromium = await browser();

const moulds = ["/^Loaf, short/", "/^Slab tray/"];

async function open_run(page, card) {
  await to(page, moulds.some((one) => one === String(card)) ? "Moulds" : "Runs");
  await page.getByRole("button", { name: card }).click();
  const which_base = page.getByRole("heading", { name: /which base/ });
  await page.locator("#run-title").or(which_base).first().waitFor();
  if (await which_base.count()) {
    await begin_run(page, { sell: 1 });
    await saved(page);
  }
  await page.locator("#run-title").waitFor();
  await to(page, "Set up");
  await page.locator(".lane.pour").waitFor();
  await settled(page);
}

/** A shipped run, or a new one with a mould of the catalogue and the meadow base. */
const with_run = (card, test, viewport) => on_page(chromium, test, { viewport, begin: (page) => open_run(page, card) });

const shipped = (name) => JSON.parse(readFileSync(join(root, "examples", name), "utf8"));
const field = (page, label) => page.getByLabel(label, { exact: true });
const press = (page, name) => page.getByRole("button", { name, exact: true }).click();
const group = (page, name) => page.getByRole("region", { name, exact: true });

/** What the run says, and what the command line makes of it, once it is in the file. */
async function kept(page, serving, file) {
  await settled(page);
  await saved(page);
  return { run: serving.file(file), plan: serving.printed("plan", file) };
}

const bead = { "What it is called": "Moon", "What is melted for it": "clear base" };
const melt = { Spares: "10", "Lost in melting": "4", "Left in the jug per tray fill": "5", "Density when set": "1.03" };

/** Whole balls of 22 mm, for which nothing is said yet of number and place. */
async function add_moon(page) {
  await press(page, "Add a decoration");
  await fill(group(page, "Decoration 1"), { "What is melted for it": "clear base", ...melt });
  await press(page, "Cast in a mould");
  await field(page, "Cast in").selectOption({ label: "Marble tray" });
  await fill(page, { "Filled to, below the brim": "0" });
  await press(page, "One cast");
  await fill(page, { "What it is called": bead["What it is called"] });
}

await run({
  "a decoration added to plain bars asks for one thing after the other, guesses nothing, and weighs as the command line says":
    () =>
      with_run(/^Plain bars/, async (page, serving) => {
        await press(page, "Add a decoration");
        const asked = [];
        const answer = async (label, value) => {
          await page.locator(".needed button", { hasText: label }).waitFor();
          asked.push(label);
          await field(page, label).fill(value);
        };
        assert.equal(
          await page.evaluate(() => document.activeElement.id),
          "f-run-decorations-0-name",
          "one cannot type on at once",
        );
        await check_access(page, "a decoration not yet said");
        await answer("What it is called", "Moon");
        await answer("What is melted for it", "clear base");
        await page.locator(".needed button", { hasText: "How is it made?" }).waitFor();
        await press(page, "Cast in a mould");
        await page.locator(".needed button", { hasText: "Cast in" }).waitFor();
        await field(page, "Cast in").selectOption({ label: "Marble tray" });
        await answer("Filled to, below the brim", "0");
        await page.locator(".needed button", { hasText: "What makes one?" }).waitFor();
        await check_access(page, "a decoration half said");
        await press(page, "One cast");
        await answer("Density when set", "1.03");
        await answer("Spares", "10");
        await answer("Lost in melting", "4");
        await answer("Left in the jug per tray fill", "5");
        await answer("On each piece", "2");
        const { run, plan } = await kept(page, serving, "plain_bars.run.json");
        assert.deepEqual(run.decorations, [
          {
            name: "Moon",
            material: "clear base",
            mould: "moulds/marble_tray.json",
            fill: { below_brim: "0 mm" },
            cast_as: "one cast",
            density: "1.03 g/ml",
            spares: "10 %",
            melt_loss: "4 %",
            left_in_jug: "5 g",
            per_piece: 2,
          },
        ]);
        assert.equal(plan.decorations[0].casts, 27); // 12 bars x 2 x 1.1 = 26.4, rounded up
        assert.equal(await figure(page, "Melt of clear base"), plan.decorations[0].make_g);
        assert.match(await page.locator(".lane.decorate .order").innerText(), /Cast 27 of Moon ahead, in 3 tray fills/); // 12 in one
        await check_access(page, "a decoration planned");
      }),

  "a decoration is removed and comes back with undo": () =>
    with_run(/^Marbles in a bowl/, async (page, serving) => {
      const before = await figure(page, "Melt of");
      await press(page, "Remove Marble");
      await settled(page);
      assert.equal(await page.locator(".lane.decorate").count(), 0);
      const { run, plan } = await kept(page, serving, "marble_bowls.run.json");
      assert.equal(run.decorations, undefined);
      assert.equal(await figure(page, "Base to make"), first_batch(plan).pour.make_g);
      assert.equal(
        await page.evaluate(() => document.activeElement.id),
        "f-run-decorations",
        "the hand has no place to go on from",
      );
      await press(page, "Undo");
      const again = await kept(page, serving, "marble_bowls.run.json");
      assert.deepEqual(again.run.decorations, shipped("marble_bowls.run.json").decorations);
      assert.equal(await figure(page, "Melt of"), before);
    }),

  "two decorations of one run are told apart, and the first is removed without the second": () =>
    with_run(/^Marbles in a bowl/, async (page, serving) => {
      await press(page, "Add another decoration");
      const second = group(page, "Decoration 2");
      await second.getByRole("button", { name: "Drizzled over" }).click();
      await fill(second, {
        "Area covered": "12",
        Thickness: "0.5",
        "What is melted for it": "white base",
        ...melt,
        "On each piece": "1",
        "What it is called": "Stripes",
      });
      const { plan } = await kept(page, serving, "marble_bowls.run.json");
      assert.equal(plan.decorations[1].volume_each_ml, 0.6); // 12 cm2 x 0.05 cm
      assert.equal(await figure(page, "Melt of white base"), plan.decorations[1].make_g);
      assert.equal(await figure(page, "Melt of clear"), plan.decorations[0].make_g);
      await check_access(page, "two decorations");
      await press(page, "Remove Marble");
      const left = await kept(page, serving, "marble_bowls.run.json");
      assert.deepEqual(
        left.run.decorations.map((one) => one.name),
        ["Stripes"],
      );
      assert.equal(await figure(page, "Melt of white base"), left.plan.decorations[0].make_g);
    }),

  "embeds are buried where two places are typed, one of them left of the middle": () =>
    with_run(/^Plain bars/, async (page, serving) => {
      await add_moon(page);
      await press(page, "Buried in the pour");
      await fill(page, { "On each piece": "2", "Cover wanted all round": "1" });
      await press(page, "Before the pour");
      await press(page, "I say where");
      await page
        .locator(".lane.decorate")
        .getByRole("group", { name: /^Place 2 of/ })
        .waitFor(); // as many as were wanted on each
      await check_access(page, "places not yet said");
      await fill(page, {
        "Place 1: x": "-20",
        "Place 1: y": "0",
        "Place 1: height": "1",
        "Place 2: x": "2 cm",
        "Place 2: y": "-3",
        "Place 2: height": "1",
      });
      const { run, plan } = await kept(page, serving, "plain_bars.run.json");
      assert.deepEqual(run.decorations[0].buried.places, [
        { x: "-20 mm", y: "0 mm", height: "1 mm" },
        { x: "2 cm", y: "-3 mm", height: "1 mm" },
      ]);
      const [first, second] = plan.decorations[0].buried.embeds;
      assert.deepEqual(first.middle_mm, [-20, 0, 12]); // a ball of 22 mm whose foot stands 1 mm high
      assert.deepEqual(second.middle_mm, [20, -3, 12]);
      assert.match(await page.locator(".lane.decorate .facts").innerText(), /Least cover to the floor\s*1 mm/);
      assert.equal(await figure(page, "Base to make"), first_batch(plan).pour.make_g);
      assert.match(
        await page.locator(".lane.pour svg[role=img]").first().getAttribute("aria-label"),
        /Drawn as a ball of its volume, whatever its shape: Moon/,
      );
      await check_access(page, "embeds in their places");

      await press(page, "Add a place");
      await fill(page, { "Place 3: x": "0", "Place 3: y": "0", "Place 3: height": "1" });
      await page
        .getByRole("group", { name: /^Place \d of/ })
        .locator(".complaint", { hasText: "cuts into place" })
        .waitFor(); // 20 mm apart, 22 mm thick
      assert.equal(serving.file("plain_bars.run.json").decorations[0].per_piece, 2 + 1);
      await page.getByRole("button", { name: "Remove place 3 of Moon" }).click();
      assert.equal((await kept(page, serving, "plain_bars.run.json")).run.decorations[0].per_piece, 2);
    }),

  "the program finds places, or says why it finds none": () =>
    with_run(/^Marbles in a bowl/, async (page, serving) => {
      await page.locator(".lane.decorate summary", { hasText: "Where it goes" }).click();
      await press(page, "Find places: turned any way");
      const { plan } = await kept(page, serving, "marble_bowls.run.json");
      assert.equal(plan.decorations[0].buried.embeds.length, 3);
      await fill(page, { "Cover wanted all round": "15 mm" });
      await page.locator(".lane.decorate .complaint", { hasText: /fit/ }).first().waitFor();
      await check_access(page, "a search without a place");
    }),

  "a rod that is turned upright is drawn upright and true to size": () =>
    with_run(/^Marbles in a bowl/, async (page, serving) => {
      await press(page, "Remove Marble");
      await press(page, "Add a decoration");
      await fill(group(page, "Decoration 1"), { "What is melted for it": "clear base", ...melt, "On each piece": "1" });
      await press(page, "A round rod, cut to length");
      await fill(page, { "Rod, diameter": "10", "Rod, length": "18" });
      await press(page, "Buried in the pour");
      await fill(page, { "Cover wanted all round": "2" });
      await press(page, "Before the pour");
      await press(page, "I say where");
      await page.locator("summary", { hasText: "Place 1 is turned" }).click();
      await fill(page, {
        "About y": "90",
        "Place 1: x": "0",
        "Place 1: y": "0",
        "Place 1: height": "5",
        "What it is called": "Peg",
      });
      const { plan } = await kept(page, serving, "marble_bowls.run.json");
      assert.deepEqual(plan.decorations[0].buried.embeds[0].middle_mm.map(Math.round), [0, 0, 14]); // 5 mm + half of 18 mm
      const drawn = await page.locator(".lane.decorate svg rect[transform]").evaluate((node) => {
        const { width, height } = node.getBoundingClientRect();
        return height / width;
      });
      assert.ok(Math.abs(drawn - 1.8) < 0.1, `${drawn}`); // 18 mm high, 10 mm across; its line has some thickness
      assert.doesNotMatch(await page.locator(".lane.pour svg[role=img]").first().getAttribute("aria-label"), /ball/);
      assert.equal(await figure(page, "Melt of clear base"), plan.decorations[0].make_g);
    }),

  "on top of a topping, turned, with its composition for the label": () =>
    with_run(/^Spring cups/, async (page, serving) => {
      for (const title of ["What it is and how it is made", "Where it goes", "For the label"])
        await page.locator(".lane.decorate section").first().locator("summary", { hasText: title }).click();
      const deco = group(page, "Pearl bead");
      await fill(deco, {
        "Pressed into the top": "4",
        "Flat of the peak, across": "9",
        "INCI name 5": "Sodium Myristate",
      });
      await deco.locator("summary", { hasText: "It is turned" }).click();
      await fill(deco, { "About x": "180" });
      await deco.getByRole("button", { name: "Add an allergen" }).click();
      await fill(deco, {
        "Allergen 1": "Linalool",
        "Supplier's document, with its date": "Allergen sheet of 2026-01-05",
      });
      await deco
        .locator(".row", { has: field(page, "Allergen 1") })
        .getByLabel("Share 1", { exact: true })
        .fill("0.2");
      const { run, plan } = await kept(page, serving, "spring_cups.run.json");
      const [one] = run.decorations;
      assert.deepEqual(one.on_top, { pressed_in: "4 mm", peak_flat: "9 mm", turn: { x: "180 deg" } });
      assert.deepEqual(one.allergens, [{ name: "Linalool", share: "0.2 %" }]);
      assert.equal(one.inci[4].name, "Sodium Myristate");
      assert.equal(plan.decorations[0].on_top.peak_flat_mm, 9);
      assert.equal(plan.decorations[0].on_top.stands_proud_mm, 12); // a ball of 16 mm, 4 mm of it sunk
      assert.match(plan.label.as_charged.text, /Sodium Myristate/);
      await check_access(page, "a decoration with all its parts open");
    }),

  "a dust is weighed by the piece, or by the surface that the air sees": () =>
    with_run(/^Plain bars/, async (page, serving) => {
      await press(page, "Add a dust");
      await page.locator(".needed button", { hasText: "Which powder" }).waitFor();
      await fill(page, { "Which powder": "gold mica" });
      await page.locator(".needed button", { hasText: "How much of it?" }).waitFor();
      await check_access(page, "a dust half said");
      await press(page, "Weighed for one piece");
      await fill(page, { "gold mica, for one piece": "0.05" });
      const by_piece = await kept(page, serving, "plain_bars.run.json");
      assert.equal(by_piece.plan.dust[0].g, 0.6); // 12 bars x 0.05 g
      assert.equal(await figure(page, "gold mica"), first_batch(by_piece.plan).dust[0].g);

      await press(page, "By the surface it covers");
      await fill(page, {
        "Powder on the covered surface": "2",
        "Share of the surface covered": "50",
        "Share of the powder that sticks": "40",
      });
      const { plan } = await kept(page, serving, "plain_bars.run.json");
      // The level surface on paper: 82 x 56 mm at the brim, its corners of 6 mm; 2 mm below it at 2 degrees of draft.
      const across = (mm) => mm - 2 * 2 * Math.tan((2 * Math.PI) / 180);
      const cm2 = (across(82) * across(56) - (4 - Math.PI) * 6 ** 2) / 100;
      assert.ok(Math.abs(plan.dust[0].exposed_cm2 - cm2) < 0.1, `${plan.dust[0].exposed_cm2} cm2, on paper ${cm2}`);
      assert.ok(Math.abs(plan.dust[0].g - (12 * cm2 * 0.002 * 0.5) / 0.4) <= 0.1);
      assert.equal(await figure(page, "gold mica"), first_batch(plan).dust[0].g);
      await check_access(page, "a dust by the surface");
      await press(page, "Remove gold mica");
      assert.equal((await kept(page, serving, "plain_bars.run.json")).run.dust, undefined);
    }),

  "a second dust, by the surface of the topping, with its name for the label": () =>
    with_run(/^Spring cups/, async (page, serving) => {
      await press(page, "Add another dust");
      const second = group(page, "Dust 2");
      await second.getByRole("button", { name: "By the surface it covers" }).click();
      await fill(second, {
        "Powder on the covered surface": "2",
        "Share of the surface covered": "50",
        "Share of the powder that sticks": "40",
        "Which powder": "silver mica",
      });
      const silver = group(page, "silver mica");
      await silver.locator("summary", { hasText: "For the label" }).click();
      await silver.getByRole("button", { name: "One name" }).click();
      await fill(silver, { "INCI name": "Mica" });
      const { run, plan } = await kept(page, serving, "spring_cups.run.json");
      assert.deepEqual(run.dust[1], {
        name: "silver mica",
        on_covered_surface: "2 mg/cm2",
        coverage: "50 %",
        share_that_sticks: "40 %",
        inci: "Mica",
      });
      const cm2 = plan.dust[1].exposed_cm2;
      assert.ok(Math.abs(plan.dust[1].g - (plan.pieces.make * cm2 * 0.002 * 0.5) / 0.4) <= 0.1); // rounded up to what the scale shows
      assert.equal(await figure(page, "silver mica"), first_batch(plan).dust[1].g);
      await check_access(page, "two dusts");
      await press(page, "Remove gold mica");
      const left = await kept(page, serving, "spring_cups.run.json");
      assert.deepEqual(
        left.run.dust.map((one) => one.name),
        ["silver mica"],
      );
      assert.equal(await figure(page, "silver mica"), first_batch(left.plan).dust[0].g);
    }),

  "a loaf is cut into bars, decorated, and left whole again": () =>
    with_run(/^Loaf, short/, async (page, serving) => {
      const whole = serving.printed("plan", "loaf_short.run.json");
      await press(page, "Cut it into bars");
      await page.locator(".needed button", { hasText: "Bar, length" }).waitFor();
      await check_access(page, "a cut not yet said");
      await press(page, "A loaf, into slices");
      await fill(page, { "Bar, thickness": "25" });
      await page.locator(".needed button", { hasText: "Kerf of each cut" }).waitFor();
      await fill(page, { "Kerf of each cut": "0", "Off each end": "4 mm" });
      const { run, plan } = await kept(page, serving, "loaf_short.run.json");
      assert.deepEqual(run.cut, { bar: { thickness: "25 mm" }, kerf: "0 mm", end_trim: "4 mm" });
      assert.equal(plan.cut.bars_each, 7); // (190 - 8) mm / 25 mm
      assert.match(await page.locator(".lane.cut .order").innerText(), /Cut 7 bars from each/);
      await to(page, "Piece");
      assert.equal(await figure(page, "A bar on average, fresh"), plan.piece.fresh_g);
      await to(page, "Set up");
      await check_access(page, "a loaf cut");

      await press(page, "Add a decoration");
      const deco = group(page, "Decoration 1");
      await press(page, "A round rod, cut to length");
      await fill(deco, { "What is melted for it": "clear base", ...melt, "Rod, diameter": "16", "Rod, length": "170" });
      await press(page, "Whole loaf");
      await fill(deco, { "In each loaf": "1" });
      await press(page, "Buried in the pour");
      await fill(deco, { "Cover wanted all round": "6" });
      await press(page, "Pressed in after");
      await press(page, "Find places: upright, at one height");
      await fill(deco, { "What it is called": "Amber rod" });
      const filled = await kept(page, serving, "loaf_short.run.json");
      assert.equal(filled.run.decorations[0].per_cast, 1);
      assert.equal(await figure(page, "Melt of clear base"), filled.plan.decorations[0].make_g);
      await check_access(page, "a loaf cut and decorated");

      await press(page, "Remove Amber rod");
      await press(page, "Leave it whole");
      const again = await kept(page, serving, "loaf_short.run.json");
      assert.equal(again.run.cut, undefined);
      assert.equal(again.plan.pour.make_g, whole.pour.make_g);
      await page.getByRole("button", { name: "Cut it into bars" }).waitFor();
    }),

  "a slab is cut both ways": () =>
    with_run(/^Slab tray/, async (page, serving) => {
      await press(page, "Cut it into bars");
      await fill(page, { "Bar, length": "3 in", "Bar, width": "2 in", "Kerf of each cut": "1 mm" });
      const { plan } = await kept(page, serving, "slab_tray.run.json");
      assert.match(await page.locator(".lane.cut .order").innerText(), new RegExp(`Cut ${plan.cut.bars_each} bars`));
      await press(page, "Along y, away from you");
      const turned = await kept(page, serving, "slab_tray.run.json");
      assert.equal(turned.run.cut.along, "y");
      assert.match(
        await page.locator(".lane.cut .order").innerText(),
        new RegExp(`Cut ${turned.plan.cut.bars_each} bars`),
      );
      await press(page, "Whichever gives more bars");
      assert.equal((await kept(page, serving, "slab_tray.run.json")).run.cut.along, undefined);
    }),

  "what is half said when the page is left is asked again when it comes back": () =>
    with_run(/^Plain bars/, async (page) => {
      await press(page, "Add a decoration");
      await page.locator(".needed").waitFor();
      await saved(page);
      await page.reload();
      await page.locator(".needed button", { hasText: "What it is called" }).click(); // it opens what it is folded in
      await page.waitForFunction(() => document.activeElement.id === "f-run-decorations-0-name");
      await press(page, "Remove Decoration 1");
      await settled(page);
      await page.locator(".lane.pour").waitFor();
    }),

  "on a tablet all of it is large enough for a glove": () =>
    with_run(
      /^Tilted loaf/,
      async (page) => {
        for (const title of ["What it is", "Where it goes", "For the label", "Place 1 is turned"])
          await page.locator("summary", { hasText: title }).first().click();
        await press(page, "A composition");
        await press(page, "Add an allergen");
        await press(page, "Add a dust");
        await press(page, "By the surface it covers");
        await page.locator(".needed").waitFor();
        await check_tablet(page, "a loaf with rods, dust and cut");
      },
      tablet,
    ),
});
await chromium.close();
