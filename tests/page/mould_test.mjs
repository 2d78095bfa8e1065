// Moulds of her own: by measures, from mesh files, sound and broken, and with water.
import assert from "node:assert/strict";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { browser, check_access, check_quiet, open, root, run, Serving, settled } from "./bench.mjs";

const chromium = await browser();

async function at_start(test) {
  const serving = await new Serving().start();
  const page = await open(chromium, serving.address);
  await settled(page);
  await page.getByRole("button", { name: "Runs and moulds" }).click();
  try {
    await test(page, serving);
    check_quiet(page);
  } finally {
    await page.context().close();
    await serving.end();
  }
}

const field = (page, label) => page.getByLabel(label, { exact: true });
const holds = (page) => page.locator(".order", { hasText: "Holds" });

async function finish(page, serving, run_file) {
  await page.getByRole("button", { name: "Use this mould" }).click();
  await page.getByRole("button", { name: /^Meadow base/ }).click();
  await settled(page);
  return serving.printed("plan", run_file);
}

await run({
  "a box by its measures holds length times width times height, and its drawing follows each key": () =>
    at_start(async (page, serving) => {
      await page.getByRole("button", { name: "By its inside measures" }).click();
      await field(page, "What you call it").fill("Deep box");
      await field(page, "Longer side at the brim (mm)").fill("100");
      await field(page, "Shorter side (mm)").fill("50");
      await field(page, "Floor to brim (mm)").fill("20");
      await holds(page).filter({ hasText: "100.0 ml" }).waitFor(); // 10 x 5 x 2 cm, on paper
      const drawing = page.locator(".drawing .wall");
      const before = await drawing.getAttribute("d");
      await field(page, "Floor to brim (mm)").fill("40");
      await holds(page).filter({ hasText: "200.0 ml" }).waitFor();
      assert.notEqual(await drawing.getAttribute("d"), before);
      await check_access(page, "a mould by measures");
      const plan = await finish(page, serving, "deep_box.run.json");
      assert.equal(plan.pour.brimful_ml, 200);
    }),

  "a measure that cannot be is refused beside its field": () =>
    at_start(async (page) => {
      await page.getByRole("button", { name: "By its inside measures" }).click();
      await page.getByRole("button", { name: "Half ball" }).click();
      await field(page, "Across the brim (mm)").fill("60 kg");
      await page.locator(".field.wants .complaint").waitFor();
      assert.ok(await page.getByRole("button", { name: "Use this mould" }).isDisabled());
      await check_access(page, "a measure refused");
    }),

  "a mesh dropped asks its unit by its size, and its role is found and said": () =>
    at_start(async (page, serving) => {
      await page.getByRole("button", { name: "From a mesh file" }).click();
      await check_access(page, "the place for a mesh");
      const bytes = readFileSync(join(root, "meshes/six_pocket_tray.stl")).toString("base64");
      const data = await page.evaluateHandle((text) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([Uint8Array.from(atob(text), (c) => c.charCodeAt(0))], "six_pocket_tray.stl"));
        return transfer;
      }, bytes);
      await page.dispatchEvent("div.drop", "drop", { dataTransfer: data });
      await page.getByRole("button", { name: "mm: 180 × 120 × 30 mm" }).click();
      await holds(page).filter({ hasText: "39.8 ml" }).waitFor();
      assert.match(await page.locator("main").innerText(), /Taken for a mould's body/);
      await check_access(page, "a mesh measured");
      const plan = await finish(page, serving, "six_pocket_tray.run.json");
      assert.equal(plan.pieces.cavities, 6);
    }),

  "a broken mesh is refused in words": () =>
    at_start(async (page, serving) => {
      const whole = readFileSync(join(root, "meshes/twisted_cup.stl"));
      const half = Math.floor(whole.readUInt32LE(80) / 2);
      const broken = Buffer.from(whole.subarray(0, 84 + 50 * half));
      broken.writeUInt32LE(half, 80);
      const path = join(serving.folder, "broken.stl");
      writeFileSync(path, broken);
      await page.getByRole("button", { name: "From a mesh file" }).click();
      await page.locator("#mesh-file").setInputFiles(path);
      await page.getByRole("button", { name: /^mm:/ }).click();
      const said = page.locator("main .alarm, main .limits");
      await said.first().waitFor();
      assert.match(await said.first().innerText(), /open|hole|skin|edges/i);
      await check_access(page, "a broken mesh");
      writeFileSync(path, "solid nothing\nendsolid nothing\n");
      await page.locator("#mesh-file").setInputFiles(path);
      await page.locator("main .alarm").waitFor();
      assert.equal(await page.getByRole("button", { name: "Use this mould" }).count(), 0);
    }),

  "water weighed in a mould corrects its measures": () =>
    at_start(async (page, serving) => {
      await page.getByRole("button", { name: "By measures and weighed water" }).click();
      await field(page, "What you call it").fill("Wet box");
      await field(page, "Longer side at the brim (mm)").fill("100");
      await field(page, "Shorter side (mm)").fill("50");
      await field(page, "Floor to brim (mm)").fill("20");
      await field(page, "Water, round 1 (g)").fill("95");
      await holds(page).filter({ hasText: "95.2 ml" }).waitFor(); // 95 g / 0.99821 g/ml at 20 °C (Kell 1975)
      await check_access(page, "water weighed");
      const plan = await finish(page, serving, "wet_box.run.json");
      assert.ok(Math.abs(plan.pour.brimful_ml - 95 / 0.998206) < 0.01);
    }),
});
await chromium.close();
