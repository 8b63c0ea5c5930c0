import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { RuleDecl } from "../../../server/src/checks/contract.js";
import { siteRules } from "../../../server/src/checks/site/index.js";
import { starterOf } from "../../../server/src/summary/starters.js";
import { faultsOf } from "./structures.js";

const sample = (name: string): string => readFileSync(join(__dirname, "../../../samples", `${name}.rootfast`), "utf8");

/** The texts the walk begins from; the pier of the landing is as deep as its own message asks. */
const texts = {
  market: sample("market-canopy"),
  landing: sample("landing-shelter").replace("depth: 3 ft 6 in", "depth: 7 ft"),
  stops: sample("bus-stop-reactions"),
  footings: starterOf("footings")?.text ?? "",
};

type Edit = readonly [from: string, to: string];

interface Walk {
  readonly rule: string;
  readonly text: keyof typeof texts;
  /** The one edit that makes the rule speak; left out where the sample does it as it stands. */
  readonly spoil?: Edit;
  readonly says: RegExp;
  /** What the message asks for. */
  readonly mend: Edit;
}

const walks: readonly Walk[] = [
  { rule: "site.load-path", text: "market", spoil: ["    base: A\n    stands on: pier\n  low side", "    stands on: pier\n  low side"], says: /it names no base. Say which base plate it stands on under `base`/, mend: ["    stands on: pier\n  low side", "    base: A\n    stands on: pier\n  low side"] },
  { rule: "site.agreement", text: "market", spoil: ["height: 9 ft 3 in", "height: 7 ft 3 in"], says: /Correct the height/, mend: ["height: 7 ft 3 in", "height: 9 ft 3 in"] },
  { rule: "site.sizes", text: "stops", spoil: ["    diameter: 30 in", "    diameter: 30 in\n    width: 24 in"], says: /a pier is round or square. Take out the one that is wrong/, mend: ["\n    width: 24 in", ""] },
  {
    rule: "site.supplied-design",
    text: "market",
    spoil: ["  frost depth: 24 in\n", "  frost depth: 24 in\n  supplied design:\n    ground snow: 10 psf\n    frost depth: 24 in\n"],
    says: /Ground snow 20 psf here; the supplied design takes 10 psf\. Have it designed for this place/,
    mend: ["ground snow: 10 psf", "ground snow: 20 psf"],
  },
  { rule: "site.slab-as-footing", text: "stops", spoil: ["class: SW", "class: concrete slab"], says: /Cut the slab open and pour a footing below the frost/, mend: ["class: concrete slab", "class: SW"] },
  {
    rule: "site.tall-pedestal",
    text: "footings",
    spoil: ["above grade: 6 in              # top of the pedestal\n    pedestal: 24 in x 24 in\n    bars: 8 no. 6  ", "above grade: 7 ft\n    pedestal: 24 in x 24 in\n    # "],
    says: /84 in out of the ground; 72 in is the most for a pedestal 24 in wide without bars\. Shorten it and run the column down, widen it to 28 in/,
    mend: ["pedestal: 24 in x 24 in", "pedestal: 28 in x 28 in"],
  },
  { rule: "site.one-ground", text: "landing", says: /bench the rock down and cushion it/, mend: ["    cone angle: 45 deg\n", "    cone angle: 45 deg\n    cushion: 12 in\n"] },
  { rule: "site.frost", text: "stops", spoil: ["depth: 7 ft", "depth: 2 ft"], says: /underside at 2 ft, 2 ft 6 in needed: the ground freezes to 2 ft 6 in\. Go deeper/, mend: ["depth: 2 ft", "depth: 30 in"] },
  { rule: "site.paving", text: "stops", spoil: ["class: SW", "class: pavers on sand"], says: /Lift the paving, pour a footing in the ground below/, mend: ["class: pavers on sand", "class: SW"] },
  {
    rule: "site.neighbors",
    text: "stops",
    spoil: ["    ignored depth: 1 ft\n", "    ignored depth: 1 ft\n    neighbors:\n      cellar:\n        kind: basement\n        distance: 2 ft\n        depth: 10 ft\n"],
    says: /2 ft away and 10 ft deep, underside at 7 ft; 3 ft needed.*Move one of them.*move them 7 ft apart/,
    mend: ["distance: 2 ft", "distance: 7 ft"],
  },
  {
    rule: "site.slope-setback",
    text: "stops",
    spoil: ["    ignored depth: 1 ft\n", "    ignored depth: 1 ft\n    slope below:\n      slope: 12 in 12\n      height: 30 ft\n      distance: 2 ft\n"],
    says: /Underside 9 ft back from the face of the slope, 30 ft high; 10 ft needed.*go down to 8 ft/,
    mend: ["depth: 7 ft", "depth: 8 ft"],
  },
  { rule: "site.isolation", text: "stops", spoil: ["    ignored depth: 1 ft\n", "    ignored depth: 1 ft\n    slab at grade:\n      kind: loose slab\n      joint: 1/4 in\n"], says: /Joint 0\.25 in; 0\.5 in needed between slab and pier.*Widen it/, mend: ["joint: 1/4 in", "joint: 1/2 in"] },
  { rule: "site.water", text: "stops", spoil: ["water table: 12 ft", "water table: 5 ft"], says: /State whether the hole is pumped dry or the concrete placed under water \(water in the hole\)/, mend: ["    depth: 7 ft\n", "    depth: 7 ft\n    water in the hole: placed under water\n"] },
  {
    rule: "site.exposure",
    text: "stops",
    spoil: ["concrete: 4000 psi\n    diameter", "concrete: 3000 psi\n    diameter"],
    says: /3500 psi is the least \(F1\), 4500 psi where it is often wet \(F2\). Order stronger concrete/,
    mend: ["concrete: 3000 psi\n    diameter", "concrete: 4500 psi\n    diameter"],
  },
  { rule: "site.cover", text: "footings", spoil: ["    bottom bars:", "    cover: 2 in\n    bottom bars:"], says: /Cover 2 in; 3 in needed/, mend: ["cover: 2 in", "cover: 3 in"] },
  { rule: "site.corrosion", text: "landing", spoil: ["  pier base:\n", "  pier base:\n    rod finish: hot-dip galvanized\n    nut finish: mechanically galvanized\n"], says: /Buy rods, nuts and washers as one set with one finish/, mend: ["nut finish: mechanically galvanized", "nut finish: hot-dip galvanized"] },
  { rule: "site.closed-sections", text: "market", spoil: ["weep hole: 1/2 in", "weep hole: 1/4 in"], says: /weep hole 0\.25 in; 0\.5 in is needed/, mend: ["weep hole: 1/4 in", "weep hole: 1/2 in"] },
  { rule: "site.ties", text: "landing", spoil: ["seismic design category: B", "seismic design category: D"], says: /what ties this foundation to the others at grade is not stated \(tied by\)/, mend: ["    depth: 7 ft\n", "    depth: 7 ft\n    tied by: grade beams\n"] },
  { rule: "site.cure", text: "stops", spoil: ["    ignored depth: 1 ft\n", "    ignored depth: 1 ft\n    days before erection: 4\n"], says: /4 days .* 7 is the least without tests.*Wait/, mend: ["days before erection: 4", "days before erection: 7"] },
];

const edited = (text: string, [from, to]: Edit): string => {
  if (!text.includes(from)) throw new Error(`"${from}" is not in the text`);
  return text.replace(from, to);
};
/** Each fault once, however many lines of columns share the foundation it is at. */
const toldBy = (rule: RuleDecl, text: string): readonly string[] => [...new Set(faultsOf(rule, text).map(({ message, support }) => message.replace(`${support?.name}: `, "")))];
const ruleOf = (id: string): RuleDecl => siteRules.find((rule) => rule.id === id)!;

describe("A walk through the samples: one edit makes a rule speak, and its message alone mends it", () => {
  it("meets every rule of the site", () => {
    expect(walks.map(({ rule }) => rule).sort()).toEqual(siteRules.map(({ id }) => id).sort());
  });

  it.each(walks.map((walk) => [walk.rule, walk] as const))("%s", (id, { text, spoil, says, mend }) => {
    const before = texts[text];
    const rule = ruleOf(id);
    if (spoil) expect(faultsOf(rule, before)).toEqual([]);
    const spoiled = spoil ? edited(before, spoil) : before;
    expect(toldBy(rule, spoiled)).toEqual([expect.stringMatching(says)]);
    expect(faultsOf(rule, edited(spoiled, mend))).toEqual([]);
  });

  it.each(walks.map((walk) => [walk.rule, walk] as const))("%s is told without the words of the machine", (_, { rule, text, spoil }) => {
    const [{ message }] = faultsOf(ruleOf(rule), spoil ? edited(texts[text], spoil) : texts[text]);
    expect(message).not.toMatch(/undefined|NaN|null|\bSI\b|\d{5,}|\.\d{5,}/u);
    expect(message).toMatch(/[.)]$/u);
  });
});
