import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Demand } from "../../server/src/actions/demand.js";
import { picturedChecks, picturesOf } from "../../server/src/drawing/pictures.js";
import { picturesOfSupport } from "../../server/src/drawing/support-pictures.js";
import type { Support } from "../../server/src/project/model.js";
import { checkText } from "../../server/src/engine/check-text.js";
import { allChecks } from "../../server/src/checks/registry.js";
import { format } from "../../server/src/units/format.js";
import { readExample } from "../worked-examples/example.js";
import { faultsOf } from "./sound.js";

const samples = readdirSync("samples").filter((name) => name.endsWith(".rootfast")).map((name) => ({ name, text: readFileSync(join("samples", name), "utf8") }));
const folder = join(__dirname, "../worked-examples");
const examples = readdirSync(folder).filter((name) => name.endsWith(".md") && name !== "README.md").map((name) => ({ name, text: readExample(readFileSync(join(folder, name), "utf8")).notebook }));

const demandsAt = (document: ReturnType<typeof checkText>["documents"][number], support: Support): readonly Demand[] => {
  const reaching = document.actions.of(support);
  return "unknown" in reaching ? [] : reaching.flatMap(({ strength }) => strength);
};

const documentsOf = (text: string) => checkText(text).documents.map((document) => ({ document, show: ((value, kind) => format(value, kind, document.system)) as Parameters<typeof picturesOf>[1] }));

describe("pictures", () => {
  it("belong to checks there are", () => {
    const known = new Set(allChecks.map(({ id }) => id));
    expect(picturedChecks.filter((id) => !known.has(id))).toEqual([]);
  });

  it.each([...samples, ...examples])("of $name are sound and stay inside their frames", ({ text }) => {
    const faults = documentsOf(text).flatMap(({ document, show }) => [
      ...document.structure.supports.flatMap((support) => picturesOfSupport(support, show).flatMap(({ svg }) => faultsOf(svg).map((fault) => `${support.path}: ${fault}`))),
      ...document.checks.flatMap((result) => picturesOf(result, show, demandsAt(document, result.support)).flatMap(({ svg }) => faultsOf(svg).map((fault) => `${result.support.path} ${result.check.id}: ${fault}`))),
    ]);
    expect(faults).toEqual([]);
  });

  it("are there for every pictured check that came to an answer in a sample, or say by their absence that it did not", () => {
    for (const { text } of samples) {
      for (const { document, show } of documentsOf(text)) {
        const without = document.checks.filter((result) => ["anchors.breakout-tension", "anchors.breakout-shear", "base.plate-uplift"].includes(result.check.id) && result.state !== "not checked" && picturesOf(result, show).length === 0);
        expect(without.map(({ support, check }) => `${support.path} ${check.id}`)).toEqual([]);
      }
    }
  });

  it("write the numbers of the calculation beside them", () => {
    const [{ document, show }] = documentsOf(samples.find(({ name }) => name === "landing-shelter.rootfast")?.text ?? "");
    const uplift = document.checks.find(({ check, support }) => check.id === "anchors.breakout-tension" && support.name === "south");
    const [picture] = picturesOf(uplift as never, show);
    const tensions = [...picture.svg.matchAll(/rod \d: ([\d.]+) kip tension/gu)].map(([, kips]) => Number(kips));
    const kip = 4448.2216152605;
    // The rods' tensions make up the demand of the check.
    expect(tensions.reduce((sum, kips) => sum + kips, 0)).toBeCloseTo((uplift?.weighed?.demand ?? 0) / kip, 2);
  });

  it("draw the ties of a pier at their spacing, or its spiral at its pitch", () => {
    const pier = (round: string) => `rootfast: 1\nfoundations:\n  one:\n    kind: pier\n    diameter: 30 in\n    depth: 5 ft\n    bars: 8 no. 7\n    ${round}\n    combined:\n      uplift: 1 kip\n`;
    const turns = (round: string): number => {
      const [{ document, show }] = documentsOf(pier(round));
      return picturesOfSupport(document.structure.supports[0], show)[0].svg.split('stroke-dasharray="2 2"').length - 1;
    };
    // 60 in less a cover of 3 in and a tie of 1/2 in at each end leave 53 in.
    expect([turns("ties: no. 4 at 10 in"), turns("spiral: no. 4 at 3 in")]).toEqual([6, 18]);
  });

  it("of a support without sizes are left out, and nothing is thrown", () => {
    const [{ document, show }] = documentsOf("rootfast: 1\nfoundations:\n  short pier:\n    kind: pier\n    combined:\n      uplift: 2 kip\n");
    expect(document.structure.supports.flatMap((support) => picturesOfSupport(support, show))).toEqual([]);
  });
});
