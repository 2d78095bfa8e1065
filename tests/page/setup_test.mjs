// The set-up apart from the result: each part a drawing, a line and a folded form; what is the same in every run said
// once; what is missing told together; and how many actions a run from nothing takes.
import assert from "node:assert/strict";
import { join } from "node:path";
import { browser, check_access, examples, first_batch, on_page, root, run, saved, settled, to } from "./bench.mjs";

const chromium = await browser();
const window_of = { width: 1180, height: 820 };
const spring = "spring_cups.run.json";

/** Every part of the set-up is folded, as at first. */
async function folded(page) {
  await page.evaluate(() => localStorage.setItem("parts", "[]"));
  await page.reload();
  await page.locator(".set-up").waitFor();
  await settled(page);
}

const with_page = (test, options = {}) => on_page(chromium, test, { viewport: window_of, ...options });
const field = (page, label) => page.getByLabel(label, { exact: true });
const press = (page, name) => page.getByRole("button", { name, exact: true }).click();
const planned = async (page, serving, file) => {
  await settled(page);
  await saved(page);
  return serving.printed("plan", file);
};

const scales = { large: { step: "1 g", most: "5 kg" }, fine: { step: "0.1 g", most: "500 g" } };
const studio = {
  schema: "brimwright.studio/1",
  scales,
  losses: {
    pour: { overpour: "1.5 %", pot: "25 g", jugs: "0 g", test_piece: "0 g" },
    pipe: { bag: "35 g", bowl_and_whisk: "30 g" },
  },
  spoilage: "4 %",
  pots: { holds: "5 l", lye_jug: "2 l" },
  cups: { "weigh-cup": "120 ml" },
  kerf: "0 mm",
};

/** One action is a press, a field filled, an answer chosen or a key. */
class Hand {
  actions = 0;
  constructor(page) {
    this.page = page;
  }
  async press(name, within = this.page) {
    ++this.actions;
    await within
      .getByRole("button", { name, exact: typeof name === "string" })
      .first()
      .click();
  }
  async view(name) {
    ++this.actions;
    await to(this.page, name);
  }
  async fill(label, value, within = this.page) {
    ++this.actions;
    await within
      .getByLabel(label, { exact: typeof label === "string" })
      .last()
      .fill(value);
  }
  async choose(label, answer) {
    ++this.actions;
    await field(this.page, label).selectOption(answer);
  }
  async key(name) {
    ++this.actions;
    await this.page.keyboard.press(name);
  }
  /** The list is open: a name, Enter takes the fat, and its share. */
  async fat(name, share) {
    await this.fill("Find a fat by its name", name);
    await this.key("Enter");
    await this.fill("Share", share);
  }
  async formula(name, { fats, superfat, water, warm }) {
    await this.view("Formulas");
    await this.fill("What you call it", name);
    await this.press("Begin from blank");
    await this.page.getByRole("heading", { name, level: 1 }).waitFor();
    for (const [fat, share] of fats) {
      await this.press("Add a fat");
      await this.fat(fat, share);
    }
    await this.fill("Superfat (share of all fat left unsaponified)", superfat);
    await this.press("NaOH, for bars");
    await this.fill("NaOH: purity", "99");
    await this.press("By the lye's strength");
    await this.fill("Strength: pure alkali in alkali and water together", water);
    await this.fill("Temperature at the pour", warm);
    await saved(this.page);
  }
}

await run({
  "the example's set-up is at most four screens, and each part a drawing, a line and its form": () =>
    with_page(async (page) => {
      await folded(page);
      const high = await page.evaluate(() => document.documentElement.scrollHeight);
      assert.ok(high <= 4 * window_of.height, `${high} px`);
      await page.locator(".lane.pour svg").first().waitFor(); // once the mould is measured
      for (const part of ["pour", "pipe", "decorate", "dust"])
        assert.equal(await page.locator(`.lane.${part} svg`).count(), 1, part);
      assert.match(await page.locator(".lane.pour .order").innerText(), /68\.0 g .* each; make 1765\.8 g/);
      assert.equal(await page.locator(".set-up input").count(), 0, "no form stands open unasked");
      await check_access(page, "the set-up, folded");
    }),

  "a part that was opened is open when she comes back": () =>
    with_page(async (page) => {
      await folded(page);
      await press(page, "Change Lye");
      await page.reload();
      await page.locator(".lane.lye .lane-body").waitFor();
      assert.equal(await page.locator(".lane.pour .lane-body").count(), 0);
    }),

  "the run's own figures become the studio's by one press, and the plan stays the same": () =>
    with_page(
      async (page, serving) => {
        const before = serving.printed("plan", spring);
        await press(page, "Keep these in my studio");
        await page.locator(".lane.studio", { hasText: "kept in studio.json" }).waitFor();
        const after = await planned(page, serving, spring);
        const kept = serving.file("studio.json");
        const own = serving.file(spring);
        assert.deepEqual(kept.scales, scales);
        assert.deepEqual(kept.losses.pour, examples(spring)[spring].losses.pour);
        assert.equal(kept.moulds_owned["moulds/twisted_cup.json"], 8);
        assert.equal(kept.currency, "EUR");
        for (const key of ["scales", "losses", "spoilage", "pots", "money"]) assert.equal(own[key], undefined, key);
        assert.deepEqual(first_batch(after).pour.ingredients, first_batch(before).pour.ingredients);
        assert.equal(after.piece.cost.amount, before.piece.cost.amount);
        await check_access(page, "figures from the studio");

        await field(page, "Base: left in the pot").fill("40");
        const changed = await planned(page, serving, spring);
        assert.equal(serving.file("studio.json").losses.pour.pot, "40 g", "an edit goes where it is said");
        assert.equal(serving.file(spring).losses, undefined);
        assert.ok(changed.pour.lost_g > after.pour.lost_g);

        await press(page, "Losses: Otherwise in this run");
        await field(page, "Base: left in the pot").fill("10");
        await planned(page, serving, spring);
        assert.equal(serving.file(spring).losses.pour.pot, "10 g");
        assert.equal(serving.file("studio.json").losses.pour.pot, "40 g");
        await press(page, "Losses: As in the studio");
        await planned(page, serving, spring);
        assert.equal(serving.file(spring).losses, undefined);
        await press(page, "Undo");
        await planned(page, serving, spring);
        assert.equal(serving.file(spring).losses.pour.pot, "10 g");
      },
      { files: examples(spring, "meadow_base.formula.json", "cloud_topping.formula.json") },
    ),

  "how many of a mould she owns moves from its own file into the studio": () =>
    with_page(
      async (page, serving) => {
        await page.getByRole("button", { name: "Move it into my studio: 3 of My cup" }).click();
        await planned(page, serving, "cups.run.json");
        await page.waitForFunction(() => document.body.innerText.includes("Else as many as"));
        assert.equal(serving.file("studio.json").moulds_owned["my_cup.json"], 3);
        assert.equal(serving.file("my_cup.json").owned, undefined);
        assert.equal(serving.printed("plan", "cups.run.json").pieces.cavities, 18);
      },
      {
        files: {
          ...examples("meadow_base.formula.json"),
          "studio.json": studio,
          "my_cup.json": {
            schema: "brimwright.mould/2",
            name: "My cup",
            cavities: 6,
            owned: 3,
            shape: { kind: "frustum", floor_diameter: "40 mm", brim_diameter: "50 mm", height: "40 mm" },
          },
          "cups.run.json": {
            schema: "brimwright.run/2",
            name: "Cups",
            sell: 17,
            pour: { mould: "my_cup.json", formula: "meadow_base.formula.json", line: { below_brim: "5 mm" } },
          },
        },
      },
    ),

  "all that is missing is told together, in no alarm, and each leads to its field": () =>
    with_page(async (page) => {
      await to(page, "Runs");
      await page
        .getByRole("button", { name: /^Plain bars/ })
        .first()
        .click();
      await page.getByRole("heading", { name: /^Plain bars/, level: 1 }).waitFor();
      await to(page, "Set up");
      await settled(page);
      await press(page, "Add a topping");
      const needed = page.locator(".needed button");
      await needed.first().waitFor();
      const words = (await needed.allInnerTexts()).map((one) => one.replace(/\s+/g, " "));
      for (const label of [
        "Topping",
        "How large the topping is",
        "Weigh-cup, net",
        "Headspace filled",
        "left in the bag",
      ])
        assert.ok(
          words.some((one) => one.includes(label)),
          `${label} is not in: ${words.join("; ")}`,
        );
      assert.equal(await page.locator(".complaint, .complaints .alarm").count(), 0, "nothing was touched yet");
      await check_access(page, "a topping half said");
      await needed.filter({ hasText: "Weigh-cup, net" }).click();
      await page.waitForFunction(() => document.activeElement.id === "f-run-pipe-whip-net");
      await page.keyboard.type("78");
      await page.keyboard.press("Tab");
      await page.waitForFunction(
        () => ![...document.querySelectorAll(".needed button")].some((one) => one.innerText.includes("Weigh-cup, net")),
      );
    }),

  "a field says its unit and that it is required, until it is filled": () =>
    with_page(async (page) => {
      const said = (id) => page.locator(`label[for="${id}"]`).getAttribute("data-said");
      assert.equal(await said("f-run-pipe-whip-net"), "g");
      await field(page, "Weigh-cup, net").fill("");
      assert.equal(await said("f-run-pipe-whip-net"), "g, required");
      assert.equal(await field(page, "Weigh-cup, net").getAttribute("aria-required"), "true");
    }),

  "six and seven millimetres are two lengths in inches": () =>
    with_page(async (page) => {
      await press(page, "oz, in");
      const line = () => page.locator(".lane.pour .order").innerText();
      const six = /to ([\d/ ]+) in/.exec(await line())[1];
      await page.getByRole("button", { name: "Pour line 1 mm lower" }).click();
      await settled(page);
      assert.deepEqual([six, /to ([\d/ ]+) in/.exec(await line())[1]], ["1/4", "9/32"]); // 7 mm is 8.8 / 32 in
    }),

  "the list of fats is chosen from by keys": () =>
    with_page(
      async (page) => {
        await press(page, "Change the formula of the base");
        await press(page, "Add a fat");
        await field(page, "Find a fat by its name").fill("palm");
        await page.locator("#fats-found > *").nth(1).waitFor();
        await page.keyboard.press("ArrowDown");
        await page.keyboard.press("ArrowDown");
        const lit = await page.locator(".picker .lit").innerText();
        await page.keyboard.press("Enter");
        await page
          .locator(".formula-row .fat-name", { hasText: lit.trim().split(",")[0] })
          .last()
          .waitFor();
        assert.equal(await page.locator(".picker").count(), 0);
      },
      { files: examples(spring, "meadow_base.formula.json", "cloud_topping.formula.json") },
    ),

  "a fat of her own is described by a form, and its formula is planned with it": () =>
    with_page(
      async (page, serving) => {
        await press(page, "Change the formula of the base");
        await page.locator(".fat-name").first().click();
        await field(page, "Find a fat by its name").fill("Tallow of Ida's cows");
        await press(page, 'Describe "Tallow of Ida\'s cows" as a fat of my own');
        await field(page, "INCI name").waitFor();
        await check_access(page, "a fat of her own, half said");
        assert.equal(await page.locator(".complaint, .asks .alarm").count(), 0, "nothing was touched yet");
        await press(page, "Oil, fat or butter");
        for (const [label, value] of [
          ["The document", "butcher Ida, analysis, 3 May 2026"],
          ["Lowest", "190"],
          ["Highest", "202"],
          ["INCI name", "Adeps Bovis"],
          ["INCI name of its sodium soap", "Sodium Tallowate"],
        ])
          await field(page, label).first().fill(value);
        await settled(page);
        await saved(page);
        const [fat] = serving.file("my.fats.json").fats;
        assert.deepEqual(fat.saponification_value, { low: 190, high: 202 });
        const formula = serving.file("meadow_base.formula.json");
        assert.equal(formula.own_fats, "my.fats.json");
        assert.equal(formula.fats[0].fat, fat.id);
        const plan = serving.printed("plan", spring);
        assert.ok(plan.pour.ingredients.some((one) => one.name === "Tallow of Ida's cows"));
        await check_access(page, "a fat of her own");
      },
      { files: examples(spring, "meadow_base.formula.json", "cloud_topping.formula.json") },
    ),

  "a tip that was measured is kept for all runs": () =>
    with_page(
      async (page, serving) => {
        await field(page, "Tip").selectOption("My own, measured");
        await field(page, "What you call the tip").fill("my star");
        await press(page, "Star");
        await field(page, "Points").fill("8");
        await field(page, "Radius to the points").fill("8");
        await field(page, "Radius to the notches").fill("5.4");
        const before = await planned(page, serving, spring);
        await press(page, "Keep this tip for all my runs");
        await page.getByText("It stands in my.tips.json").waitFor();
        const after = await planned(page, serving, spring);
        assert.equal(serving.file(spring).pipe.beads.tip, "my star");
        assert.deepEqual(serving.file("my.tips.json").tips[0].star, {
          points: 8,
          outer_radius: "8 mm",
          inner_radius: "5.4 mm",
        });
        assert.equal(after.pipe.visible_by.beads_ml, before.pipe.visible_by.beads_ml);
        await check_access(page, "a tip of her own");
      },
      { files: examples(spring, "meadow_base.formula.json", "cloud_topping.formula.json") },
    ),

  "a run from nothing takes at most 80 actions: own cup, base, topping and embed, with the studio set up before": () =>
    with_page(
      async (page, serving) => {
        await folded(page);
        const hand = new Hand(page);
        await hand.formula("My base", {
          fats: [
            ["olive oil", "50"],
            ["coconut oil", "30"],
            ["shea", "20"],
          ],
          superfat: "5",
          water: "33",
          warm: "38 °C",
        });
        await hand.formula("My topping", {
          fats: [
            ["coconut oil", "40"],
            ["palm oil", "60"],
          ],
          superfat: "6",
          water: "30",
          warm: "22 °C",
        });
        await hand.view("Moulds");
        await hand.press("By its inside measures");
        await hand.press("Round cup");
        for (const [label, value] of [
          ["What you call it", "My cup"],
          [/^Across the floor/, "40"],
          [/^Across the brim/, "55"],
          [/^Floor to brim/, "45"],
          ["Cavities in one mould", "24"],
        ])
          await hand.fill(label, value);
        await page.locator(".order", { hasText: "Holds" }).waitFor();
        await hand.press("Use this mould");
        await hand.fill("Pieces to sell", "24");
        await hand.press(/^My base/);
        await page.locator(".set-up").waitFor();
        await hand.fill("Below brim", "8");
        await hand.press("Add a topping");
        await hand.choose("Topping", { label: "My topping" });
        await hand.press("Weigh trials piped on paper");
        await hand.fill("Trial 1", "24");
        await hand.fill("Weigh-cup of the trials, net", "80");
        await hand.press("Half, 50 %");
        await hand.fill("Weigh-cup, net", "78");
        await hand.press("Add a decoration");
        await hand.fill("What it is called", "Rod");
        await hand.fill("What is melted for it", "clear base");
        await hand.press("A round rod, cut to length");
        await hand.fill("Rod, diameter", "8");
        await hand.fill("Rod, length", "20");
        await hand.fill("On each piece", "1");
        await hand.fill("Spares", "10");
        await hand.fill("Lost in melting", "4");
        await hand.fill("Left in the jug per tray fill", "5");
        await hand.fill("Density when set", "1.03");
        await hand.press("Buried in the pour");
        await hand.fill("Cover wanted all round", "4");
        await hand.press("Before the pour");
        await hand.press("Find places: upright, at one height");
        const plan = await planned(page, serving, "my_cup.run.json");
        assert.equal(plan.pieces.sell, 24);
        assert.equal(plan.decorations[0].buried.embeds.length, 1);
        assert.ok(plan.pipe && plan.from_studio);
        console.log(`     ${hand.actions} actions`);
        assert.ok(hand.actions <= 80, `${hand.actions} actions`);
      },
      { files: { "studio.json": studio } },
    ),

  "a mesh becomes a mould by six actions, and a loaf is cut by six, of which three are figures": () =>
    with_page(
      async (page, serving) => {
        await folded(page);
        const loaf = new Hand(page);
        await loaf.view("Moulds");
        await loaf.press(/^Loaf, short/);
        await loaf.fill("Pieces to sell", "9");
        await loaf.fill("Thickness of a slice", "25");
        await check_access(page, "a loaf that is to be cut");
        await loaf.press(/^Meadow base/);
        await page.locator(".set-up").waitFor();
        await loaf.fill("Below brim", "5");
        const plan = await planned(page, serving, "loaf_short.run.json");
        assert.ok(plan.cut.bars_each > 1);
        assert.deepEqual(serving.file("loaf_short.run.json").cut, { bar: { thickness: "25 mm" } });
        assert.ok(plan.from_studio.sections.includes("kerf"));
        assert.ok(loaf.actions <= 6, `${loaf.actions} actions`);

        await field(page, "Kerf of each cut").fill("2"); // of the cutter, in every run
        await planned(page, serving, "loaf_short.run.json");
        assert.equal(serving.file("studio.json").kerf, "2 mm");
        await press(page, "Undo");
        await planned(page, serving, "loaf_short.run.json");

        const mesh = new Hand(page);
        await mesh.view("Moulds");
        await mesh.press("From a mesh file");
        ++mesh.actions;
        await page.locator("input[type=file]").setInputFiles(join(root, "meshes", "shell_pebble.stl"));
        await mesh.press(/^mm/);
        await mesh.press("What is filled, or the piece");
        await page.locator(".order", { hasText: "Holds" }).waitFor();
        await mesh.press("Use this mould");
        await page.getByRole("heading", { name: /which base/ }).waitFor();
        assert.ok(mesh.actions <= 6, `${mesh.actions} actions`);
      },
      { files: { "studio.json": studio } },
    ),
});
await chromium.close();
