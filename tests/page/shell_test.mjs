// What stands around every view: the way there and back, undo, whether it is saved, and what calls for her.
import assert from "node:assert/strict";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import {
  browser,
  check_access,
  examples,
  on_page,
  open_all,
  open_run,
  root,
  run,
  saved,
  settled,
  tablet,
  to,
} from "./bench.mjs";

const chromium = await browser();

const desk = { width: 1180, height: 820 };
const phone = { width: 390, height: 844 };
const spring = () => examples("spring_cups.run.json", "meadow_base.formula.json", "cloud_topping.formula.json");

const with_page = (test, viewport = desk, files = spring()) => on_page(chromium, test, { files, viewport });

const two_runs = () => ({
  ...spring(),
  "second.run.json": {
    ...spring()["spring_cups.run.json"],
    name: "Second",
    id: "5f1d6bb8-7d34-4c8e-9c6f-3a6f1d1f3c11",
  },
});
/** The example's cup, hers. */
function own_cup() {
  const cup = JSON.parse(readFileSync(join(root, "moulds/twisted_cup.json"), "utf8"));
  delete cup.mesh;
  return cup;
}

const third_id = "5f1d6bb8-7d34-4c8e-9c6f-3a6f1d1f3c12";

/** Answers about these files, and plans of them, come so many milliseconds late. */
const come_late = (page, by_file) =>
  page.route(/\/api\/(file\?|plan)/, async (route) => {
    const asked = `${decodeURIComponent(route.request().url())} ${route.request().postData() ?? ""}`;
    const late = Object.entries(by_file).find(([file]) => asked.includes(file))?.[1] ?? 0;
    await new Promise((later) => setTimeout(later, late));
    await route.continue().catch(() => undefined); // the test may be over
  });

const long_name = `${"long_".repeat(40)}name.run.json`;

const press = (page, name) => page.getByRole("button", { name, exact: true }).click();
const field = (page, label) => page.getByLabel(label, { exact: true });
const here = (page) => page.locator(".rail nav button[aria-current]").innerText();
const place = (page) => decodeURIComponent(new URL(page.url()).hash);
const comes_to = (page, address) => page.waitForFunction((hash) => decodeURIComponent(location.hash) === hash, address);

/** What asks for a word's meaning takes a finger, and no other thing lies over it. */
async function check_tablet_targets(page) {
  const covered = await page.locator(".ask-term").evaluateAll((all) =>
    all.flatMap((one) => {
      one.scrollIntoView({ block: "center" });
      const { left, top, width, height } = one.getBoundingClientRect();
      const corners = [0.1, 0.9].flatMap((x) => [0.1, 0.9].map((y) => [left + x * width, top + y * height]));
      const is_free = corners.every(([x, y]) => one.contains(document.elementFromPoint(x, y)));
      return is_free && width >= 44 && height >= 44 ? [] : [`${one.ariaLabel}: ${width} x ${height}`];
    }),
  );
  assert.deepEqual(covered, []);
}

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
      await page.waitForFunction(() => document.activeElement.textContent.trim() === "Change the formula of the base");
      assert.ok(Math.abs((await page.evaluate(() => scrollY)) - scroll) <= 2);
    }, phone),

  "the address holds the view and never the key, and a reload stays where it was": () =>
    with_page(async (page, serving) => {
      const key = new URL(serving.address).hash.slice(1);
      for (const view of [
        "Weigh",
        "Set up",
        "Cautions",
        "Piece",
        "Mould",
        "Print",
        "Runs",
        "Orders",
        "Formulas",
        "Moulds",
        "Fats",
        "Tips",
        "Shelf",
      ]) {
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

  "she who goes on before a run has come stays where she went, with that run": () =>
    with_page(
      async (page, serving) => {
        await to(page, "Runs");
        await come_late(page, { "second.run.json": 700 });
        await page
          .getByRole("button", { name: /^Second/ })
          .first()
          .click();
        await to(page, "Set up");
        await page.getByRole("heading", { name: "Second", level: 1 }).waitFor();
        await settled(page);
        await page.waitForTimeout(900); // for whatever comes late
        assert.match(await here(page), /^Set up/);
        assert.equal(place(page), "#set-up/second.run.json");
        await field(page, "Pieces to sell").fill("30");
        await saved(page);
        assert.equal(serving.file("second.run.json").sell, 30);
      },
      desk,
      two_runs(),
    ),

  "of two runs that are tapped one after the other the last one is shown, however long the first takes": () =>
    with_page(
      async (page, serving) => {
        await to(page, "Runs");
        await come_late(page, { "second.run.json": 700, "third.run.json": 200 });
        await page
          .getByRole("button", { name: /^Second/ })
          .first()
          .click();
        await page
          .getByRole("button", { name: /^Third/ })
          .first()
          .click();
        await page.waitForTimeout(900);
        await settled(page);
        assert.equal(place(page), "#weigh/third.run.json");
        await to(page, "Set up");
        await page.getByRole("heading", { name: "Third", level: 1 }).waitFor();
        await field(page, "Pieces to sell").fill("30");
        await saved(page);
        assert.equal(serving.file("third.run.json").sell, 30);
        assert.equal(serving.file("second.run.json").sell, 46);
      },
      desk,
      { ...two_runs(), "third.run.json": { ...two_runs()["second.run.json"], name: "Third", id: third_id } },
    ),

  "a formula that comes after she went elsewhere does not take her back to it": () =>
    with_page(
      async (page) => {
        await to(page, "Formulas");
        await come_late(page, { "my_own.formula.json": 700 });
        await page.getByRole("button", { name: /^Mine/ }).first().click();
        await to(page, "Weigh");
        await page.waitForTimeout(900);
        await settled(page);
        assert.match(await here(page), /^Weigh/);
        assert.equal(place(page), "#weigh/spring_cups.run.json");
        assert.equal(await page.locator(".weighing .weigh").first().isVisible(), true);
        assert.equal(await page.getByRole("button", { name: "Undo" }).isDisabled(), true);
      },
      desk,
      {
        ...spring(),
        "my_own.formula.json": { ...spring()["meadow_base.formula.json"], name: "Mine" },
      },
    ),

  "a mould that was being changed and comes after she went to the list does not take the list's place": () =>
    with_page(
      async (page) => {
        const open_cup = () => page.locator(".file", { hasText: "cup.json" }).locator(".open").click();
        await to(page, "Moulds");
        await open_cup();
        await press(page, "Change it");
        await field(page, "What you call it").fill("My cup");
        await come_late(page, { "cup.json": 900 });
        await page.reload();
        await page.waitForFunction(() => document.documentElement.dataset.settled === "true");
        await to(page, "Moulds");
        await page.waitForTimeout(1100);
        await page.getByRole("heading", { name: "A new mould of your own" }).waitFor();
        assert.equal(place(page), "#moulds");
        await open_cup();
        await press(page, "Change it");
        await to(page, "Moulds");
        await page.waitForTimeout(1100);
        await page.getByRole("heading", { name: "A new mould of your own" }).waitFor();
        assert.equal(await page.locator("#mould-form").count(), 0);
      },
      desk,
      { ...spring(), "cup.json": own_cup() },
    ),

  "a formula that comes late does not lie open as that of a run which names another by then": () =>
    with_page(
      async (page, serving) => {
        await come_late(page, { "my_own.formula.json": 700 });
        const base = page.getByLabel("Base", { exact: true });
        await base.selectOption("my_own.formula.json");
        await base.selectOption("meadow_base.formula.json");
        await page.waitForTimeout(900);
        await settled(page);
        await press(page, "Change the formula of the base");
        await page.getByRole("heading", { name: "Meadow base", level: 1 }).waitFor();
        await page.locator("#f-pour-superfat").fill("8 %");
        await saved(page);
        assert.equal(serving.file("meadow_base.formula.json").superfat, "8 %");
        assert.notEqual(serving.file("my_own.formula.json").superfat, "8 %");
      },
      desk,
      {
        ...spring(),
        "my_own.formula.json": { ...spring()["meadow_base.formula.json"], name: "Mine" },
      },
    ),

  "what is pressed does not move away beneath the finger when figures come": () =>
    with_page(async (page) => {
      let let_go;
      const held = new Promise((go) => (let_go = go));
      await page.route("**/api/plan", async (route) => {
        const answer = await route.fetch();
        await held;
        await route.fulfill({ response: answer });
      });
      await field(page, "Pieces to sell").fill("46 of them"); // a complaint stands above all else, as soon as it comes
      const button = page.locator('.lane.pour .choice button[aria-pressed="false"]').first();
      await page.evaluate(() => (document.documentElement.style.overflowAnchor = "none")); // not every browser has it
      await button.evaluate((one) => one.scrollIntoView({ block: "center" }));
      await button.evaluate((one) => (one.id = "pressed"));
      const pressed = page.locator("#pressed");
      const { x, y, width, height } = await pressed.boundingBox();
      await page.mouse.move(x + width / 2, y + height / 2);
      await page.mouse.down();
      let_go();
      await page.waitForTimeout(900); // the answer is there, and it complains
      assert.equal((await pressed.boundingBox()).y, y, "it moved beneath the finger");
      await page.mouse.up();
      await page.locator("#pressed[aria-pressed=true]").waitFor();
      await page.locator(".complaint").first().waitFor();
      assert.notEqual((await pressed.boundingBox()).y, y, "nothing came that would have moved it");
    }),

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
        for (const one of await page.locator(".rail button:visible").all()) {
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

  "two quick taps copy once, and take back two steps": () =>
    with_page(async (page, serving) => {
      const files = () => readdirSync(serving.folder).filter((name) => name.endsWith(".run.json"));
      await to(page, "Runs");
      const own = page.getByRole("region", { name: "Your runs" }).locator(".file");
      const there = files();
      await own.locator(".dots").click();
      await page.route("**/api/file*", (route) => setTimeout(() => void route.continue(), 300));
      const twice = (button) => button.evaluate((one) => [one, one].forEach((each) => each.click()));
      await twice(page.getByRole("button", { name: "Copy", exact: true }));
      await page.waitForFunction(() => document.activeElement.id === "list-name");
      await page.keyboard.type("Twice");
      await press(page, "Save");
      await page.locator("#list-name").waitFor({ state: "detached" });
      assert.equal(files().length, there.length + 1);
      await twice(page.locator(".steps button", { hasText: "Undo" }));
      await own.nth(1).waitFor({ state: "detached" });
      assert.deepEqual(files(), there);
      assert.equal(await page.locator("main [role=alert]").count(), 0);
    }),

  "a run is copied, renamed with its file, noted and removed, and each is taken back in one step": () =>
    with_page(async (page, serving) => {
      const files = () => readdirSync(serving.folder).filter((name) => name.endsWith(".run.json"));
      const undo = async (name) => {
        await page.locator(".steps button", { hasText: "Undo" }).click();
        await page.locator(".file b", { hasText: name }).first().waitFor();
      };
      const more = (name) => page.getByRole("button", { name: `Name, note, copy or remove: ${name}`, exact: true });
      await to(page, "Runs");
      const own = page.getByRole("region", { name: "Your runs" }).locator(".file");
      const there = files();
      await own.locator(".dots").click();
      await check_access(page, "a file's name, note and what is done to it");
      await press(page, "Copy");
      await own.nth(1).waitFor();
      await page.waitForFunction(() => document.activeElement.id === "list-name");
      const copy = files().find((name) => !there.includes(name));
      const [first, second] = [serving.file("spring_cups.run.json"), serving.file(copy)];
      assert.notEqual(first.id, second.id, "a copy is another run");
      const { $schema: _, ...alike } = first;
      assert.deepEqual({ ...second, id: 0, name: "" }, { ...alike, id: 0, name: "" });

      await page.keyboard.type("Été 🌼 cups");
      await field(page, "Note").fill("For the market.");
      await field(page, "Name of the file").fill("été 🌼");
      await press(page, "Save");
      await own.locator(".file-name", { hasText: "été 🌼.run.json" }).waitFor();
      assert.ok(existsSync(join(serving.folder, "été 🌼.run.json")) && !existsSync(join(serving.folder, copy)));
      assert.equal(serving.file("été 🌼.run.json").name, "Été 🌼 cups");
      assert.equal(serving.file("été 🌼.run.json").note, "For the market.");
      let go_on;
      const held = new Promise((release) => (go_on = release));
      await page.route("**/api/file/rename", async (route) => {
        await held;
        await route.continue();
      });
      await undo("Spring cups, twisted, copy");
      await more("Spring cups, twisted, copy").click(); // under its new name still
      await field(page, "Note").fill("Typed under way.");
      go_on();
      await own.locator(".file-name", { hasText: copy }).waitFor(); // drawn anew under its old name
      await page.unroute("**/api/file/rename");
      assert.equal(serving.file(copy).note, first.note);
      assert.equal(await field(page, "Note").inputValue(), "Typed under way.");
      assert.equal(await field(page, "Name of the file").inputValue(), copy.replace(".run.json", ""));
      await press(page, "Remove");
      await page.getByText("Removed Spring cups, twisted, copy.").first().waitFor();
      assert.deepEqual(files(), there);
      await check_access(page, "a file removed");
      await page.locator(".told button", { hasText: "Undo" }).click();
      await more("Spring cups, twisted, copy").waitFor();
      assert.ok(files().includes(copy));
      await undo("Spring cups, twisted"); // the copying itself
      await more("Spring cups, twisted, copy").waitFor({ state: "detached" });
      assert.deepEqual(files(), there);
    }),

  "the run that lies open is renamed under way, and what is typed goes into its new file": () =>
    with_page(async (page, serving) => {
      await to(page, "Runs");
      await page.getByRole("region", { name: "Your runs" }).locator(".dots").click();
      await field(page, "Name of the file").fill("autumn");
      await field(page, "Name").fill("Autumn cups");
      await press(page, "Save");
      await page.locator(".file-name", { hasText: "autumn.run.json" }).waitFor();
      await to(page, "Set up");
      await page.getByRole("heading", { name: "Autumn cups", level: 1 }).waitFor();
      await field(page, "Pieces to sell").fill("31");
      await saved(page);
      assert.equal(serving.file("autumn.run.json").sell, 31);
      assert.equal(place(page), "#set-up/autumn.run.json");
      assert.equal(await page.locator(".banner").count(), 0);
    }),

  "what several runs rest on says so before it is changed, and is not removed unasked": () =>
    with_page(
      async (page, serving) => {
        await page.getByRole("button", { name: "Change the formula of the base" }).first().click();
        await page
          .locator(".mind", { hasText: "Used by Second and Spring cups, twisted: a change here changes both" })
          .waitFor();
        await check_access(page, "a formula of two runs");
        await to(page, "Formulas");
        await page
          .getByRole("button", { name: "Name, note, copy or remove: Meadow base", exact: true })
          .first()
          .click();
        await page.getByText(/^Used by .*Second/).waitFor();
        await press(page, "Remove");
        await page.getByText(/cannot be planned without it/).waitFor();
        assert.ok(existsSync(join(serving.folder, "meadow_base.formula.json")));
        await press(page, "Remove it even so");
        await page.getByText("Removed Meadow base.").first().waitFor();
        assert.ok(!existsSync(join(serving.folder, "meadow_base.formula.json")));
        await page.locator(".told button").click();
        await page.getByText("Removed Meadow base.").first().waitFor({ state: "detached" });
        assert.ok(existsSync(join(serving.folder, "meadow_base.formula.json")));
      },
      desk,
      two_runs(),
    ),

  "a formula renamed is named anew by the run that lies open": () =>
    with_page(
      async (page, serving) => {
        await to(page, "Formulas");
        await page
          .getByRole("button", { name: "Name, note, copy or remove: Meadow base", exact: true })
          .first()
          .click();
        await field(page, "Name of the file").fill("hedge");
        await press(page, "Save");
        await page.locator(".file-name", { hasText: "hedge.formula.json" }).waitFor();
        for (const name of ["spring_cups.run.json", "second.run.json"])
          assert.equal(serving.file(name).pour.formula, "hedge.formula.json");
        await to(page, "Set up");
        await settled(page);
        assert.equal(await page.locator(".banner").count(), 0, "it is no other hand");
        await field(page, "Pieces to sell").fill("29");
        await saved(page);
        assert.equal(serving.file("spring_cups.run.json").pour.formula, "hedge.formula.json");
      },
      desk,
      two_runs(),
    ),

  "a new run takes nothing that was not said: its pour line is asked for, and no fault": () =>
    with_page(async (page, serving) => {
      await to(page, "Runs");
      await press(page, "New run");
      await check_access(page, "a new run half said");
      assert.ok(await page.getByRole("button", { name: "Make the run" }).isDisabled());
      await field(page, "Name").fill("Bowls");
      await page.locator("#new-run-mould").selectOption({ label: "Low bowl" });
      await page.locator("#new-run-formula").selectOption({ label: "Meadow base" });
      for (const none of ["", "0", "6.5", "six"]) {
        await field(page, "Pieces to sell").fill(none);
        assert.ok(await page.getByRole("button", { name: "Make the run" }).isDisabled(), none);
      }
      await field(page, "Pieces to sell").fill("7");
      await press(page, "Make the run");
      await page.getByRole("heading", { name: "Bowls", level: 1 }).waitFor();
      await settled(page);
      const { name, sell, pour } = serving.file("bowls.run.json");
      assert.deepEqual(
        { name, sell, pour },
        {
          name: "Bowls",
          sell: 7,
          pour: { mould: "moulds/low_bowl.json", formula: "meadow_base.formula.json" },
        },
      );
      assert.equal(place(page), "#set-up/bowls.run.json");

      const needed = page.locator(".needed button");
      await needed.first().waitFor();
      assert.deepEqual(
        (await needed.allInnerTexts()).map((one) => one.replace(/\s+/g, " ")),
        ["Pour Below brim"],
      );
      assert.equal(await page.locator(".complaint, .alarm").count(), 0);
      await check_access(page, "a run without its pour line");
      await to(page, "Weigh");
      await needed.first().click();
      await page.waitForFunction(() => document.activeElement.id === "f-run-pour-line-below_brim");
      await page.keyboard.type("4");
      await settled(page);
      await page.getByRole("button", { name: "Pour line 1 mm lower" }).click();
      await settled(page);
      await saved(page);
      assert.deepEqual(serving.file("bowls.run.json").pour.line, { below_brim: "5 mm" });
      assert.equal(await needed.count(), 0);
    }),

  "a long name is cut short to the eye alone": () =>
    with_page(
      async (page) => {
        await to(page, "Runs");
        const name = page.getByRole("region", { name: "Your runs" }).locator(".file-name").first();
        assert.equal(await name.textContent(), long_name);
        assert.equal(await page.evaluate(() => document.documentElement.scrollWidth), phone.width);
        await check_access(page, "a long name");
      },
      phone,
      { ...spring(), [long_name]: { ...spring()["spring_cups.run.json"], name: "Ж".repeat(90) } },
    ),

  "what is typed of a mould is taken back and brought again": () =>
    with_page(
      async (page) => {
        await to(page, "Moulds");
        await press(page, "By its inside measures");
        await field(page, "Floor to brim (mm)").fill("30");
        await field(page, "What you call it").fill("Garden bar");
        await press(page, "Undo");
        assert.equal(await field(page, "What you call it").inputValue(), "");
        await press(page, "Undo");
        assert.equal(await field(page, "Floor to brim (mm)").inputValue(), "");
        await press(page, "Redo");
        assert.match(await field(page, "Floor to brim (mm)").inputValue(), /^30/);
      },
      desk,
      {},
    ),

  "a word of the trade is explained where it stands, by a button and no hover": () =>
    with_page(async (page) => {
      await page.getByRole("button", { name: "Change the formula of the base" }).first().click();
      const ask = page.locator(".strip").getByRole("button", { name: "What superfat as weighed means" });
      await ask.click();
      await page.locator(".strip .term-words", { hasText: "Below 0 %" }).waitFor();
      assert.equal(await ask.getAttribute("aria-expanded"), "true");
      await check_access(page, "a word explained");
      await page.keyboard.press("Enter");
      await page.locator(".term-words").waitFor({ state: "detached" });
    }),

  "each word of the trade is explained where it is met, once on a view": () =>
    with_page(async (page) => {
      const source = readFileSync(join(root, "src/web/page/source/figures/terms.ts"), "utf8");
      const terms = [...source.matchAll(/^ {2}\w+: \{(?:\n {4}| )name: "([^"]+)"/gm)].map(([, name]) => name).sort();
      assert.ok(terms.length >= 12, "the words stand in their file as they did");
      const met = new Set();
      const look = async (view) => {
        const asked = await page
          .getByRole("button", { name: /^What .* means$/ })
          .evaluateAll((all) => all.map((one) => /^What (.*) means$/.exec(one.getAttribute("aria-label"))[1]));
        assert.deepEqual(asked, [...new Set(asked)], `twice on ${view}`);
        for (const name of asked) met.add(name);
      };
      await to(page, "Weigh");
      await page.locator(".weighing .weigh").first().waitFor();
      await open_all(page);
      await look("the weights");
      for (const name of ["weigh-cup", "superfat as weighed"])
        await page.getByRole("button", { name: `What ${name} means` }).click();
      assert.equal(await page.locator(".term-words").count(), 2);
      await check_access(page, "words explained among the weights");
      await to(page, "Piece");
      await press(page, "By a margin");
      await page.getByLabel("Margin, of the price").fill("40");
      await page.locator(".quote .ask-term").first().waitFor();
      await look("the price of a piece");
      for (const run of [/^Spring cups/, /^Tilted/]) {
        await open_run(page, run, "Set up");
        await open_all(page);
        await look(`the set-up of ${run}`);
      }
      for (const ask of await page.locator(".set-up .ask-term").all()) await ask.click();
      await check_access(page, "every word of the set-up explained");
      await check_tablet_targets(page);
      await press(page, "Change the formula of the base");
      await open_all(page);
      await look("the formula");
      assert.deepEqual([...met].sort(), terms);
    }),

  "dark and light, every view has its contrast": () =>
    with_page(async (page) => {
      for (const colorScheme of ["dark", "light"]) {
        await page.emulateMedia({ colorScheme });
        const paper = await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
        const [light] = /\d+/.exec(paper);
        assert.ok(colorScheme === "dark" ? light < 60 : light > 200, paper);
        for (const view of [
          "Weigh",
          "Set up",
          "Cautions",
          "Piece",
          "Mould",
          "Print",
          "Runs",
          "Orders",
          "Formulas",
          "Moulds",
          "Fats",
          "Tips",
          "Shelf",
        ]) {
          await to(page, view);
          await check_access(page, `${view}, ${colorScheme}`);
        }
      }
    }),

  "printed, a view is black on white and has no buttons": () =>
    with_page(async (page) => {
      await page.emulateMedia({ media: "print", colorScheme: "dark" });
      // A box to tick is left, for a pen.
      const buttons = page.locator("button:visible, select:visible, input:not([type=checkbox]):visible");
      for (const view of [
        "weigh",
        "watch",
        "money",
        "mould",
        "runs",
        "orders",
        "formulas",
        "moulds",
        "fats",
        "tips",
        "shelf",
      ]) {
        await page.evaluate((hash) => (location.hash = hash), view);
        await page.waitForFunction((name) => document.querySelector("main").dataset.view === name, view);
        const left = await buttons.evaluateAll((all) =>
          all.filter((one) => getComputedStyle(one).borderTopStyle !== "none").map((one) => one.textContent.trim()),
        );
        assert.deepEqual(left, [], view);
        const colours = await page.evaluate(() => {
          const style = getComputedStyle(document.body);
          return [style.color, getComputedStyle(document.documentElement).backgroundColor];
        });
        assert.deepEqual(colours, ["rgb(0, 0, 0)", "rgb(255, 255, 255)"], view);
      }
    }),

  "by keyboard alone a run is found in the list, opened and changed": () =>
    with_page(async (page) => {
      const tab_to = async (words) => {
        for (let i = 0; i < 600; ++i) {
          await page.keyboard.press("Tab");
          const here = await page.evaluate(() => {
            const node = document.activeElement;
            return (node.ariaLabel ?? node.labels?.[0]?.textContent ?? node.textContent).trim();
          });
          if (here.startsWith(words)) return;
        }
        assert.fail(`the Tab key never comes to ${words}`);
      };
      await tab_to("Runs");
      await page.keyboard.press("Enter");
      await page.waitForFunction(() => document.activeElement.textContent === "Runs");
      await tab_to("Plain bars");
      await page.keyboard.press("Enter");
      await page.waitForFunction(() => document.activeElement.textContent === "Plain bars");
      await tab_to("Set up");
      await page.keyboard.press("Enter");
      await page.waitForFunction(() => location.hash.startsWith("#set-up"));
      await tab_to("Pieces to sell");
      await page.keyboard.press("Control+A");
      await page.keyboard.type("17");
      await saved(page);
    }),
});
await chromium.close();
