import { describe, expect, it } from "vitest";
import { coverageLines, notCovered, notCoveredText } from "../../server/src/checks/coverage.js";
import { loadsDone } from "../../server/src/checks/coverage/loads.js";
import { findDeclared } from "../../server/src/checks/registry.js";
import { foot, inch } from "./given.js";
import { standing } from "./ground.js";

/** Everything the way from roof to ground needs, by heading, with the lines that answer for it. */
const needed: Readonly<Record<string, readonly string[]>> = {
  "load levels": ["loads.levels"],
  "wind on open roofs": ["loads.wind-open-roof", "loads.wind-drag", "loads.wind-blocked"],
  "roof edge pressures": ["loads.wind-edges"],
  "dead load, roof live load, snow, added loads": ["loads.dead", "loads.roof-live", "loads.snow", "loads.rain", "loads.added"],
  "seismic for cantilevered columns": ["loads.seismic", "loads.least-sideways"],
  combinations: ["loads.combinations"],
  "the way down": ["loads.way-down", "loads.frame"],
  "net uplift, top and bottom": ["loads.net-uplift"],
  "column strength, weld, holes, top connection": ["column.members", "column.shear", "column.sway", "column.weld", "column.holes", "column.top"],
  "base plate": ["base.plate", "base.details", "base.erection", "base.shear-path"],
  "leveling nuts and grout, plate below the finish": ["base.leveling-nuts", "base.below-finish"],
  "cast-in anchors": ["anchors.tension", "anchors.blowout", "anchors.shear", "anchors.interaction", "anchors.reinforcement", "anchors.spacing"],
  "rod materials and pattern errors": ["anchors.rods"],
  "adhesive bars in concrete": ["anchors.adhesive"],
  "seismic anchors": ["anchors.seismic"],
  "pier: lateral": ["pier.lateral", "pier.broms", "pier.rotation"],
  "pier: uplift": ["pier.pull"],
  "pier: bearing": ["pier.end"],
  "pier: concrete": ["pier.concrete"],
  "footing on soil": ["footing.stability", "footing.concrete", "footing.soil", "footing.strip"],
  "wall with posts on top": ["wall.earth", "wall.stem", "wall.joint", "wall.anchors"],
  "footing on rock with dowels": ["rock.dowels", "rock.dowel-details", "rock.sliding", "rock.pressure", "rock.pad-concrete"],
  "all supports on rock or none": ["rock.mixed"],
  "load path": ["site.path"],
  "frost, durability, neighbors, ties, construction": ["site.depth", "site.durability", "site.neighbors", "site.ties", "site.construction"],
  consistency: ["site.consistency"],
  "smallest that works": ["job.smallest"],
  quantities: ["job.quantities"],
  "said aloud": [
    "job.skin", "job.beams", "job.roof-plane", "job.flood", "job.impact", "job.ice", "job.thermal", "job.fatigue", "job.existing", "job.additions", "job.erection-wind",
  ],
};

const byId = new Map(coverageLines.map((line) => [line.id, line]));

describe("What is known to be needed", () => {
  it.each(Object.entries(needed))("%s has its lines", (_, ids) => {
    expect(ids.filter((id) => !byId.has(id))).toEqual([]);
  });

  it("names no line twice", () => {
    expect(byId.size).toBe(coverageLines.length);
  });

  it.each(coverageLines.map((line) => [line.id, line] as const))("%s names checks that exist, and says what is left where nothing does it", (_, line) => {
    const known = (id: string): boolean => findDeclared(id) !== undefined || (loadsDone as readonly string[]).includes(id);
    expect(line.by.filter((id) => !known(id))).toEqual([]);
    expect(line.line).toMatch(/^[A-Z0-9].*\.$/);
    if (line.by.length === 0) expect(line.left).toBeDefined();
    if (line.left !== undefined) expect(line.left).toMatch(/^[A-Z].*\.$/);
  });
});

describe("What is said aloud beside a support", () => {
  const ids = (support: ReturnType<typeof standing>): readonly string[] => notCovered(support).map(({ id }) => id);
  const pier = standing({ column: {}, base: {}, foundation: { kind: "pier", diameter: 30 * inch }, ground: { kind: "soil" } });

  it("names the concrete of a pier and the shear of its anchors, and nothing about walls or rock", () => {
    expect(ids(pier)).toEqual(expect.arrayContaining(["pier.concrete", "pier.rotation", "anchors.shear", "job.flood", "loads.snow"]));
    expect(ids(pier).filter((id) => /^(wall|rock|footing)\./.test(id))).toEqual([]);
  });

  it("names earth pressure where a wall on rock holds back soil", () => {
    const wall = (retains: number) => standing({ column: {}, foundation: { kind: "wall on footing", retains }, ground: { kind: "rock" } });
    expect(ids(wall(3 * foot))).toEqual(expect.arrayContaining(["loads.own-weight-wall", "wall.earth", "rock.dowels"]));
    expect(ids(wall(0))).not.toContain("loads.own-weight-wall");
    expect(ids(wall(0)).filter((id) => id.startsWith("pier."))).toEqual([]);
  });

  it("says nothing of the roof's loads where the reactions are given", () => {
    const given = standing({ column: { combined: {} }, foundation: { kind: "pier" }, ground: { kind: "soil" } });
    expect(ids(given).filter((id) => id.startsWith("loads."))).toEqual([]);
  });

  it("asks about earthquake unless the category is A", () => {
    const of = (category?: string) => ids(standing({ column: {}, base: {}, site: { "seismic design category": category } }));
    expect(of()).toContain("loads.seismic");
    expect(of("A")).not.toContain("loads.seismic");
    expect(of("B")).not.toContain("anchors.seismic");
    expect(of("D")).toContain("anchors.seismic");
  });

  it("shows what is left of a line that is done in part", () => {
    const line = notCovered(pier).find(({ id }) => id === "pier.lateral")!;
    expect(notCoveredText(line)).toMatch(/^Ground that falls away/);
  });
});
