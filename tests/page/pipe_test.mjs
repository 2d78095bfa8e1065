// Topping, layers, warmth and the rest of a run, said by clicks; the figures are the command line's own.
import assert from "node:assert/strict";
import {
  browser,
  check_access,
  check_tablet,
  figure,
  fill,
  first_batch,
  on_page,
  open_all,
  open_run,
  opened,
  root,
  run,
  saved,
  settled,
  tablet,
  to,
} from "./bench.mjs";

const chromium = await browser();
const spring = "spring_cups.run.json";
const plain = "plain_bars.run.json";

const with_page = (test, { viewport, opened } = {}) =>
  on_page(chromium, test, { viewport, begin: (page) => opened && open_run(page, opened, "Set up") });

const plain_bars = { opened: /^Plain bars/ };
const field = (page, label) => page.getByLabel(label, { exact: true });
const press = (page, name) => page.getByRole("button", { name, exact: true }).click();
const part = (page, name) => page.getByRole("group", { name, exact: true });
const unfold = (page, summary, within = "main") =>
  page.locator(within).locator("summary", { hasText: summary }).first().click();

const turn_pot = (page) => page.getByRole("button", { name: "Make one pot of lye solution for both" }).click();

async function planned(page, serving, file) {
  await saved(page); // of a run that came with the program as a file of hers, whose figures are asked for anew
  await settled(page);
  return serving.printed("plan", file);
}

/** What is shown to so many decimals is what the command line prints. */
const near = (shown, printed, decimals) =>
  assert.ok(Math.abs(shown - printed) <= 0.5 * 10 ** -decimals + 1e-9, `${shown} is shown, ${printed} printed`);

async function add_beads(page) {
  await press(page, "Add a topping");
  await press(page, "Calculate it from the tip and its moves");
  await field(page, "Tip").selectOption("star 8 x 16 mm");
  await field(page, "Bead ÷ tip opening").fill("1,15");
  await page.getByRole("button", { name: /^\+ Ring/ }).click();
  await field(page, "Radius, to the bead's middle").fill("18");
  await page.getByRole("button", { name: /^\+ Spiral/ }).click();
  await fill(part(page, "2. Spiral"), {
    Turns: "2",
    "Radius at the start": "13",
    "Radius at the end": "3",
    Rise: "24",
  });
  await field(page, "Topping").selectOption({ label: "Meadow base" });
  await press(page, "Not at all, 0 %");
  await fill(page, {
    "Weigh-cup, net": "78",
    "Topping: left in the bag": "35",
    "Topping: left in bowl and whisk": "30",
  });
  await page.locator(".lane.pipe").getByLabel("Cup holds", { exact: true }).fill("120");
}

const moves_of = (file) => file.pipe.beads.moves.map((one) => one.move);

await run({
  "a topping of beads is built by clicks until it has a plan, and the plan is the command line's": () =>
    with_page(async (page, serving) => {
      await press(page, "Add a topping");
      await page.locator(".needed").waitFor();
      await press(page, "Calculate it from the tip and its moves");
      await check_access(page, "beads half said");
      await press(page, "Undo");
      await press(page, "Undo");
      await add_beads(page);
      const plan = await planned(page, serving, plain);
      assert.deepEqual(serving.file(plain).pipe.beads, {
        tip: "star 8 x 16 mm",
        bead_to_opening: 1.15,
        moves: [
          { move: "ring", radius: "18 mm" },
          { move: "spiral", turns: 2, start_radius: "13 mm", end_radius: "3 mm", rise: "24 mm" },
        ],
      });
      // The ring by Pappus, on paper: an 8-point star of 8 and 5.4 mm has 8 x 8 x 5.4 x sin(pi / 8) mm2.
      const section = 8 * 8 * 5.4 * Math.sin(Math.PI / 8) * 1.15;
      assert.ok(Math.abs(plan.pipe.visible_by.moves[0].volume_ml - (section * 2 * Math.PI * 18) / 1000) < 0.0006);
      near(await figure(page, "Lays down", ".lane.pipe"), plan.pipe.visible_by.moves[0].volume_ml, 1);
      near(await figure(page, "By beads"), plan.pipe.visible_by.beads_ml, 1);
      near(await figure(page, "Topping on each"), plan.pipe.volume_each_ml, 1);
      near(await figure(page, "Topping to make"), first_batch(plan).pipe.make_g, 1);
      for (const label of ["Lays down", "By beads", "Topping on each"]) {
        assert.match(await opened(page.locator(".lane.pipe .figure", { hasText: label }).first()), /=[\s\S]*(ml|mm)/);
      }
      await check_access(page, "a topping of beads");
    }, plain_bars),

  "every move of the schema can be added and is understood": () =>
    with_page(async (page, serving) => {
      await add_beads(page);
      const more = [
        ["Dollop", { Diameter: "20", Height: "12" }],
        ["Tail", { Length: "8" }],
        ["Dots", { "How many": "6", "Radius of their circle": "12", Height: "5" }],
        ["Shells", { "How many": "8", "Radius of their circle": "14", Length: "9" }],
        ["Straight bead", { Length: "30", "Distance from the middle": "-4 mm", "Starts at height": "2" }],
      ];
      for (const [i, [words, values]] of more.entries()) {
        await page.getByRole("button", { name: new RegExp(`^\\+ ${words}`) }).click();
        await fill(part(page, `${i + 3}. ${words}`), values);
      }
      const plan = await planned(page, serving, plain);
      assert.deepEqual(moves_of(serving.file(plain)), ["ring", "spiral", "dollop", "tail", "dots", "shells", "bead"]);
      assert.equal(plan.pipe.visible_by.moves.length, 7);
      near(await figure(page, "By beads"), plan.pipe.visible_by.beads_ml, 1);
    }, plain_bars),

  "moves change places by button, go and come back by undo, and the keyboard stays with them": () =>
    with_page(async (page, serving) => {
      await press(page, "1. Ring later");
      assert.equal(await page.evaluate(() => document.activeElement.getAttribute("aria-label")), "2. Ring earlier");
      await planned(page, serving, spring);
      assert.deepEqual(moves_of(serving.file(spring)), ["spiral", "ring"]);
      await press(page, "2. Ring earlier");
      await planned(page, serving, spring);
      assert.deepEqual(moves_of(serving.file(spring)), ["ring", "spiral"]);
      await press(page, "Remove 2. Spiral");
      const short = await planned(page, serving, spring);
      near(await figure(page, "By beads"), short.pipe.visible_by.beads_ml, 1);
      assert.equal(short.pipe.visible_by.moves.length, 1);
      await press(page, "Undo");
      await planned(page, serving, spring);
      assert.deepEqual(moves_of(serving.file(spring)), ["ring", "spiral"]);
      await check_access(page, "moves that changed places");
    }),

  "several ways to the topping stand side by side, and the hand that they tell of is kept for her own tip": () =>
    with_page(async (page, serving) => {
      await press(page, "Measure its outline");
      await press(page, "Cone");
      await fill(part(page, "Its outline"), { Diameter: "48", Height: "40", "Share that is soap, not air": "70" });
      await field(page, "Tip").selectOption("My own, measured");
      await field(page, "What you call the tip").fill("my star");
      await press(page, "Star");
      await fill(part(page, "My own tip"), {
        Points: "8",
        "Radius to the points": "8",
        "Radius to the notches": "5,4",
      });
      const plan = await planned(page, serving, spring);
      const by = plan.pipe.visible_by;
      near(await figure(page, "By weighed trials"), by.trials_ml, 1);
      near(await figure(page, "By beads"), by.beads_ml, 1);
      near(await figure(page, "By its outline"), by.envelope_ml, 1);
      assert.ok(Math.abs(by.envelope_ml - (0.7 * (Math.PI / 12) * 48 * 48 * 40) / 1000) < 0.001); // a cone, on paper
      const words = await page.getByText(/Your hand lays down/).innerText();
      assert.ok(
        words.includes(`${Number(by.suggested_correction.correction.toFixed(2))} times`) && words.includes("5 trials"),
        words,
      );
      await page.getByRole("button", { name: /^Keep .* for my tip$/ }).click();
      const kept = await planned(page, serving, spring);
      assert.deepEqual(serving.file(spring).pipe.beads.tip.hand, {
        correction: by.suggested_correction.correction,
        trials: 5,
      });
      assert.ok(Math.abs(kept.pipe.visible_by.beads_ml - kept.pipe.visible_by.trials_ml) < 0.05); // a factor of three decimals
      await check_access(page, "three ways to one topping");
      await press(page, "Remove the trials");
      await press(page, "Remove the outline");
      const alone = await planned(page, serving, spring);
      assert.equal(alone.pipe.visible_by.trials_ml, null);
      near(await figure(page, "Topping to make"), first_batch(alone).pipe.make_g, 1);
    }),

  "a tip of a file of her own is found by its name": () =>
    with_page(async (page, serving) => {
      const { writeFileSync, readFileSync } = await import("node:fs");
      writeFileSync(`${serving.folder}/studio.tips.json`, readFileSync(`${root}/examples/studio.tips.json`));
      await field(page, "Bead ÷ tip opening").fill("1.1"); // a copy beside the file of tips
      await planned(page, serving, spring);
      await unfold(page, "Tips of a file of your own");
      await field(page, "File of tips").fill("studio.tips.json");
      await field(page, "File of tips").blur();
      await page.locator("option", { hasText: "open star, large" }).waitFor({ state: "attached" });
      await field(page, "Tip").selectOption("open star, large");
      const plan = await planned(page, serving, spring);
      assert.equal(serving.file(spring).pipe.beads.tip, "open star, large");
      near(await figure(page, "By beads"), plan.pipe.visible_by.beads_ml, 1);
    }),

  "bowl, pace and spoon come and go, and each limit follows": () =>
    with_page(async (page, serving) => {
      const studio = page.locator(".lane.studio");
      await unfold(page, "Piping speed");
      await fill(studio, {
        "Bowl holds": "",
        "Smallest unwhipped amount the whisk reaches": "",
        "Lye spoon holds": "",
        "From one spoonful to the next": "",
      });
      await press(page, "Remove the pace");
      const bare = await planned(page, serving, spring);
      assert.equal(bare.pipe.limits.length, 0);
      assert.equal(await page.locator(".lane.pipe .limits li").count(), 0);
      await fill(studio, { "Bowl holds": "5 l", "Smallest unwhipped amount the whisk reaches": "400" });
      await press(page, "Add your piping speed");
      await fill(part(page, "The pace"), { "Can be piped for": "30", "To pipe one": "25", "To change the bag": "60" });
      await fill(studio, { "Lye spoon holds": "15", "From one spoonful to the next": "20" });
      const plan = await planned(page, serving, spring);
      const original = serving.printed("plan", `${root}/examples/${spring}`);
      assert.deepEqual(plan.pipe.limits, original.pipe.limits);
      assert.deepEqual(plan.pipe.lye_spoonfuls, original.pipe.lye_spoonfuls);
      await press(page, "Remove today's weigh-cup");
      assert.equal((await planned(page, serving, spring)).pipe.pieces_now, null);
      await check_access(page, "bowl, pace and spoon");
    }),

  "how warm lye and fats are is said in its lane, and what follows stands on the shelf": () =>
    with_page(async (page, serving) => {
      await unfold(page, "How warm", ".lane.pour");
      await fill(page.locator(".lane.pour"), {
        "Room and dry alkali": "21",
        Water: "10",
        "Of the water, as ice": "30",
        "Lye when it is used": "40",
        Fats: "45",
      });
      await page.locator(".lane.pour").getByLabel("The lye cools in").selectOption("ice bath");
      const plan = await planned(page, serving, plain);
      assert.deepEqual(serving.file(plain).pour.temperatures, {
        room_at: "21 °C",
        water_at: "10 °C",
        ice_share: "30 %",
        lye_used_at: "40 °C",
        fats_at: "45 °C",
        cooled_in: "ice bath",
      });
      assert.ok(
        (await page.locator(".jug").first().innerText()).includes(`may reach ${plan.pour.heat.peak_c.toFixed(0)} °C`),
      );
      await field(page, "Batter must stay below").fill("42");
      await planned(page, serving, plain);
      await fill(page.locator(".lane.pour"), { "Batter must stay below": "", Fats: "", "Of the water, as ice": "" });
      await page.locator(".lane.pour").getByLabel("The lye cools in").selectOption("");
      await planned(page, serving, plain);
      assert.deepEqual(serving.file(plain).pour.temperatures, {
        room_at: "21 °C",
        water_at: "10 °C",
        lye_used_at: "40 °C",
      });
    }, plain_bars),

  "layers are made of one pour, each with a colour whose weight opens its arithmetic": () =>
    with_page(async (page, serving) => {
      await press(page, "Pour it in layers");
      await press(page, "One more layer on top");
      await field(page, "Parts").last().fill("2");
      const two = await planned(page, serving, plain);
      assert.deepEqual(
        two.pour.layers.map((one) => one.name),
        ["Layer 1", "Layer 2"],
      );
      await unfold(page, "Name, colours, tilt", ".lane.pour .part");
      await part(page, "Layer Layer 1").getByLabel("Name of the layer").fill("Rose");
      await press(page, "Add a colour");
      await field(page, "Colour").fill("rose clay");
      await field(page, "Rate").fill("1 tsp/lb of fats");
      await field(page, "Bulk density (for spoons)").fill("0.6");
      await unfold(page, "For the label", ".lane.pour .part");
      await press(page, "One name");
      await field(page, "INCI name").fill("Kaolin");
      const plan = await planned(page, serving, plain);
      assert.deepEqual(serving.file(plain).pour.layers[0].colours, [
        { name: "rose clay", rate: "1 tsp/lb of fats", bulk_density: "0.6 g/ml", inci: "Kaolin" },
      ]);
      assert.equal(await figure(page, "rose clay", ".lane.pour"), first_batch(plan).pour.layers[0].colours[0].g);
      assert.equal(
        await figure(page, "Layer 2", ".lane.pour"),
        Number(first_batch(plan).pour.layers[1].g_text),
        "at the step of the scale that it is weighed on",
      );
      assert.match(
        await opened(page.locator(".lane.pour .figure", { hasText: "rose clay" })),
        /rate ×[\s\S]*bulk density[\s\S]*0\.6 g\/ml/,
      );
      await check_access(page, "a layer with a colour");
      await press(page, "Rose later");
      await planned(page, serving, plain);
      assert.deepEqual(
        serving.file(plain).pour.layers.map((one) => one.name),
        ["Layer 2", "Rose"],
      );
      await press(page, "Undo");
      await planned(page, serving, plain);
      assert.deepEqual(
        serving.file(plain).pour.layers.map((one) => one.name),
        ["Rose", "Layer 2"],
      );
    }, plain_bars),

  "layers by parts, by thickness and by weight are one pour said in three ways": () =>
    with_page(async (page, serving) => {
      const before = serving.printed("plan", `${root}/examples/${spring}`).pour.layers.map((one) => one.volume_each_ml);
      for (const [words, key] of [
        ["Thickness", "depth"],
        ["Weight in one", "mass"],
      ]) {
        await press(page, words);
        const plan = await planned(page, serving, spring);
        assert.ok(key in serving.file(spring).pour.layers[0] && serving.file(spring).pour.layers[1].rest === true);
        plan.pour.layers.forEach((one, i) =>
          assert.ok(Math.abs(one.volume_each_ml - before[i]) < 0.01, `${key}: ${one.volume_each_ml} for ${before[i]}`),
        );
      }
      await press(page, "Rose takes the rest");
      await field(page, "Plain, mass").fill("20");
      const plan = await planned(page, serving, spring);
      assert.equal(plan.pour.layers[1].mass_each_g, 20);
      await press(page, "From the floor");
      const deep = await planned(page, serving, spring);
      assert.ok("depth" in serving.file(spring).pour.line);
      assert.ok(Math.abs(deep.pour.below_brim_mm - 6) < 1e-3);
      await check_access(page, "layers by weight");
    }),

  "the mould is propped up for a layer, and lies level again": () =>
    with_page(
      async (page, serving) => {
        await unfold(page, "Name, colours, tilt", ".lane.pour .part");
        await press(page, "Remove the tilt");
        const level = await planned(page, serving, "tilted_loaf.run.json");
        await press(page, "Tilt the mould for this layer");
        await field(page, "Tilt").fill("12");
        await press(page, "+y, back");
        const plan = await planned(page, serving, "tilted_loaf.run.json");
        assert.deepEqual(serving.file("tilted_loaf.run.json").pour.layers[0].tilted, {
          angle: "12 °",
          low_side: "+y",
        });
        assert.ok(plan.pour.layers[0].to_mm > level.pour.layers[0].to_mm);
        assert.deepEqual(
          plan.pour.layers,
          serving.printed("plan", `${root}/examples/tilted_loaf.run.json`).pour.layers,
        );
        await check_access(page, "a propped layer");
      },
      { opened: /^Tilted loaf/ },
    ),

  "one pot of lye for both batters is switched on, its figures open, and it is switched off": () =>
    with_page(async (page, serving) => {
      await turn_pot(page);
      await field(page, "The empty pot weighs").fill("412");
      const { lye_pot: pot } = first_batch(await planned(page, serving, spring));
      assert.equal(await figure(page, "In the pot: NaOH"), pot.alkalis[0].g);
      assert.equal(await figure(page, "In the pot: water"), pot.water_g);
      assert.equal(await figure(page, "Lye solution in the pot"), pot.lye_g);
      const full = /([\d.]+) g \([\d.]+ oz\) with the pot/.exec(await page.locator(".lane.lye").innerText());
      assert.equal(Number(full[1]), pot.full_pot_g);
      for (const share of pot.shares) {
        assert.equal(await figure(page, `Out of it for ${share.batter}`), share.lye_g);
        if (share.top_up_g > 0) assert.equal(await figure(page, `and plain water to ${share.batter}`), share.top_up_g);
      }
      const buttons = page.locator(".lane.lye .jug", { hasText: "One pot for both" }).locator(".figure button");
      assert.equal(await buttons.count(), 3 + pot.shares.length + pot.shares.filter((one) => one.top_up_g > 0).length);
      for (const button of await buttons.all()) {
        await button.click();
        assert.equal(await button.getAttribute("aria-expanded"), "true");
      }
      await settled(page);
      const sums = await page.locator(".lane.lye .sum").allInnerTexts();
      assert.ok(sums.some((text) => /added up[\s\S]*rounded down/.test(text) && /its own weighing/.test(text)));
      await check_access(page, "one pot for both, its arithmetic open");
      await turn_pot(page);
      assert.equal(first_batch(await planned(page, serving, spring)).lye_pot, null);
      assert.equal(serving.file(spring).lye_pot, undefined);
    }),

  "two lyes that are not one are not put into one pot, in the program's words beside the button": () =>
    with_page(async (page) => {
      await field(page, "Topping").selectOption({ label: "Dual-lye cream" });
      await turn_pot(page);
      const said = page.locator(".lane.lye .complaint");
      await said.waitFor();
      assert.match(await said.innerText(), /take different alkalis/);
      await check_access(page, "a pot refused");
      await turn_pot(page);
      await settled(page);
    }),

  "a topping is taken away with all that is its own, and comes back": () =>
    with_page(async (page, serving) => {
      const before = serving.printed("plan", `${root}/examples/${spring}`);
      await turn_pot(page);
      await planned(page, serving, spring);
      await press(page, "Take the topping away");
      assert.equal(await page.evaluate(() => document.activeElement.id), "topping-back");
      await page.waitForFunction(
        () => !document.querySelector(".lane.pipe") && document.documentElement.dataset.settled === "true",
      );
      await saved(page);
      const file = serving.file(spring);
      assert.deepEqual([file.pipe, file.losses.pipe, file.lye_pot], [undefined, undefined, undefined]);
      await check_access(page, "a topping removed");
      await press(page, "Bring the topping back");
      const back = await planned(page, serving, spring);
      assert.deepEqual(back.pipe.ingredients, before.pipe.ingredients);
      near(await figure(page, "Topping to make"), first_batch(before).pipe.make_g, 1);
    }),

  "a topping half said is there to be finished when the page is opened again": () =>
    with_page(async (page, serving) => {
      await press(page, "Add a topping");
      await press(page, "Measure its outline");
      await saved(page);
      await page.reload();
      await page.getByRole("heading", { name: "My studio" }).waitFor();
      await fill(part(page, "Its outline"), { Diameter: "40", Height: "20", "Share that is soap, not air": "80" });
      await field(page, "Topping").selectOption({ label: "Meadow base" });
      await press(page, "Dome");
      await press(page, "Level, 100 %");
      await page.locator(".needed").waitFor();
      await check_access(page, "a run without a plan");
      await fill(page, {
        "Weigh-cup, net": "78",
        "Topping: left in the bag": "35",
        "Topping: left in bowl and whisk": "30",
        "Topping: left in the tip": "4",
      });
      await page.locator(".lane.pipe").getByLabel("Cup holds", { exact: true }).fill("120");
      const plan = await planned(page, serving, plain);
      assert.ok(Math.abs(plan.pipe.visible_each_ml - (0.8 * (Math.PI / 6) * 40 * 40 * 20) / 1000) < 0.001); // half an ellipsoid, on paper
      near(await figure(page, "Topping to make"), first_batch(plan).pipe.make_g, 1);
    }, plain_bars),

  "a bottle is used up over both batters at one rate": () =>
    with_page(async (page, serving) => {
      await unfold(page, "Bottles of fragrance to use up");
      await press(page, "Use up a bottle");
      await field(page, "Fragrance, as in the formulas").fill("lavender essential oil");
      await field(page, "The bottle holds").fill("50");
      const { bottles } = first_batch(await planned(page, serving, spring));
      assert.deepEqual(serving.file(spring).bottles, [{ name: "lavender essential oil", holds: "50 g" }]);
      for (const one of bottles[0].parts) assert.equal(await figure(page, `Into the ${one.part.toLowerCase()}`), one.g);
      assert.match(
        await opened(page.locator(".lane.lye .figure", { hasText: "Into the base" })),
        /one rate[\s\S]*50 g/,
      );
      await check_access(page, "a bottle to use up");
      await press(page, "Remove lavender essential oil");
      assert.deepEqual(first_batch(await planned(page, serving, spring)).bottles, []);
    }),

  "a label is drafted from finished pieces, or from how much they differ": () =>
    with_page(async (page, serving) => {
      await press(page, "Draft the label");
      await press(page, "In the EU");
      await field(page, "Heavier or lighter by").fill("2 %");
      await planned(page, serving, plain);
      await press(page, "With the e mark");
      const by_spread = await planned(page, serving, plain);
      assert.deepEqual(serving.file(plain).label, { market: "EU", weight_spread: "2 %", e_mark: true });
      assert.equal(by_spread.label.market, "EU");
      await press(page, "In the US");
      await press(page, "I have weighed finished pieces");
      for (const [i, grams] of ["96", "97.5", "95.2"].entries()) await field(page, `Piece ${i + 1}`).fill(grams);
      await field(page, "Your labels already say").fill("90");
      const plan = await planned(page, serving, plain);
      assert.deepEqual(serving.file(plain).label, {
        market: "US",
        weighed_pieces: ["96 g", "97.5 g", "95.2 g"],
        printed_weight: "90 g",
      });
      await check_access(page, "a label drafted");
      await to(page, "Piece");
      near(await figure(page, "Net weight for the label"), plan.piece.label_g, 0);
      await to(page, "Set up");
      await press(page, "Remove the label");
      assert.equal((await planned(page, serving, plain)).label, null);
    }, plain_bars),

  "on a tablet all of it is 44 px high and wide": () =>
    with_page(
      async (page, serving) => {
        await press(page, "Measure its outline");
        await press(page, "Cone");
        await fill(part(page, "Its outline"), { Diameter: "48", Height: "40", "Share that is soap, not air": "70" });
        await field(page, "Tip").selectOption("My own, measured");
        await press(page, "Another outline");
        await turn_pot(page);
        await open_all(page);
        await press(page, "Tilt the mould for this layer");
        await page.getByRole("button", { name: "A composition" }).first().click();
        await page.getByRole("button", { name: "Add an allergen" }).first().click();
        await press(page, "Use up a bottle");
        await open_all(page);
        await check_tablet(page, "everything opened");
        await press(page, "I have weighed finished pieces");
        await open_all(page);
        await check_tablet(page, "a piece weighed");
        await press(page, "Thickness");
        await check_tablet(page, "layers by thickness");
        assert.ok(serving.file(spring).pipe);
      },
      { viewport: tablet },
    ),
});
await chromium.close();
