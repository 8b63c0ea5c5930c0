import { describe, expect, test } from "vitest";
import type { Located } from "../../server/src/notebook/fields.js";
import { parseNotebook } from "../../server/src/notebook/parse.js";
import { readNotebook } from "../../server/src/notebook/read-notebook.js";
import { notebook } from "../../server/src/notebook/schema.js";
import { shortToLong } from "../../server/src/notebook/short-to-long.js";
import { absolute } from "../../server/src/notebook/tree.js";
import { applied, sample } from "./sample.js";

const inch = 0.0254;
const foot = 0.3048;
const read = (text: string) => {
  const parsed = parseNotebook(text);
  const reading = readNotebook(parsed, 0);
  return { values: reading.values, problems: [...parsed.problems, ...reading.problems], reading };
};
const slice = (text: string, span: Parameters<typeof absolute>[0]) => {
  const { start, end } = absolute(span);
  return text.slice(start, end);
};

describe("the sample", () => {
  const { values, problems } = read(sample);

  test("reads without a message", () => expect(problems).toEqual([]));

  test("gives values in SI with their places", () => {
    const pier = values.foundations?.value.get("pier")?.value;
    expect(pier?.depth?.value).toBeCloseTo(7 * foot, 12);
    expect(pier?.depth && slice(sample, pier.depth.span)).toBe("7 ft");
    expect(pier?.depth?.path).toBe("foundations.pier.depth");
    expect(pier?.bars?.value.count?.value).toBe(8);
    expect(pier?.bars?.value.bar?.value.name).toBe("no. 6");
    expect(pier?.bars?.value.bar && slice(sample, pier.bars.value.bar.span)).toBe("no. 6");
    expect(values.columns?.value.get("north")?.value.from?.value).toEqual({ x: 3 * foot, y: 21 * foot });
    expect(values.columns?.value.get("north")?.value.height?.expression).toBe("clear height + 3 ft");
    expect(values.columns?.value.get("south")?.value.section?.value.name).toBe("HSS6x6x3/8");
    expect(values.bases?.value.get("A")?.value["leveling nuts"]?.value).toBe(true);
    expect(values.roof?.value.slope?.value).toBeCloseTo(2 / 12, 12);
    expect(values.confirm?.value[0].value).toBe("ground.granite.dowel bond: by pull test, two dowels a line");
    expect(values.accept?.value[0].value.because?.value).toBe("bare roof, no glass or ceiling");
    expect(values.project?.value.notes?.value).toBe("North line on granite: sound where seen.\nSouth line in till.\n");
  });

  test("places a named entry at its name", () => {
    const pier = values.foundations?.value.get("pier");
    expect(pier && slice(sample, pier.span)).toBe("pier");
  });
});

describe("a slip in a field", () => {
  /** The line, the code, the stretch it is placed at, part of the message, and the line after the first fix. */
  const rows: [string, string, string, string, string?][] = [
    ["depth: 7", "quantity.no-unit", "7", "7 has no unit", "depth: 7 ft"],
    ["frost: 7 ft", "shape.unknown-key", "frost", "is not a field of pier"],
    ["frost depth: 7 ft", "shape.unknown-key", "frost depth", "it belongs under site"],
    ["spacing x: 7 in", "shape.unknown-key", "spacing x", "it belongs under bolts or under anchors"],
    ["confirm: x", "shape.unknown-key", "confirm", "a section of its own"],
    ["dpeth: 7 ft", "shape.unknown-key", "dpeth", "did you mean depth?", "depth: 7 ft"],
    ["depth: 1,5 ft", "quantity.comma", "1,5", "decimal comma", "depth: 1.5 ft"],
    ["depth: 7 psi", "quantity.wrong-dimension", "7 psi", "a length is needed"],
    ["depth: −7 ft", "quantity.minus-sign", "−", "minus sign", "depth: -7 ft"],
    ["depth: ７ ft", "quantity.digits", "７", "not a digit", "depth: 7 ft"],
    ["depth: 7\u00a0ft", "quantity.space", "\u00a0", "ordinary space", "depth: 7 ft"],
    ["depth: -7 ft", "quantity.bounds", "-7 ft", "-7 ft cannot be the depth; write a length more than zero."],
    ["depth: 0 ft", "quantity.bounds", "0 ft", "more than zero"],
    ["above grade: -1 in", "quantity.bounds", "-1 in", "zero or more"],
    ["depth: 012 ft", "number.leading-zero", "012", "012 is read as 12", "depth: 12 ft"],
    ["depth: .inf", "quantity.not-finite", ".inf", "not a number one can build to"],
    ["depth:", "shape.no-value", "depth", "has no value yet"],
    ["depth: [7 ft]", "shape.wrong-kind", "depth", "a list stands here"],
    ["depth: {a: 7 ft}", "shape.wrong-kind", "depth", "a group of fields stands here"],
    ["dowels: 3 ft", "shape.wrong-kind", "3 ft", "write its fields below it"],
    ["ground: tll", "reference.unknown", "tll", "did you mean till?", "ground: till"],
    ['ground: "tll"', "reference.unknown", "tll", "did you mean till?", 'ground: "till"'],
    ["ground: moon", "reference.unknown", "moon", "there are granite, till"],
    ["bars: 8", "shape.short-form", "8", "write it like 8 no. 6"],
    ["bars: 2 no. 6", "number.bounds", "2", "a number from 3 to 60"],
    ["bars: 8 no. 66", "bar.unknown", "no. 66", "not a bar that is made", "bars: 8 no. 18"],
    ["restrained at grade: maybe", "yes-no.unknown", "maybe", "yes or no", "restrained at grade: yes"],
    ["kind: peir", "choice.unknown", "peir", "did you mean pier?", "kind: pier"],
    ["kind: tower", "choice.unknown", "tower", "pier, footing, footing on rock or wall on footing"],
    ["spiral: no. 4 at 3", "quantity.no-unit", "3", "3 has no unit", "spiral: no. 4 at 3 in"],
    ["footing: 42 in x 14 in x 3 in", "shape.short-form", "42 in x 14 in x 3 in", "where 2 are needed"],
  ];
  test.each(rows)("%s", (line, code, stretch, message, fixed) => {
    const start = "rootfast: 1\nground:\n  granite:\n    kind: rock\n  till:\n    kind: soil\nfoundations:\n  pier:\n    retains: 1 ft\n    ";
    const text = `${start}${line}\n    length: 9 ft\n`;
    const { problems } = read(text);
    expect(problems.map((problem) => problem.code)).toEqual([code]);
    expect(slice(text, problems[0].span)).toBe(stretch);
    expect(problems[0].message).toContain(message);
    if (fixed !== undefined) expect(applied(text, problems[0])).toBe(text.replace(line, () => fixed));
  });

  test("of a column or the notebook itself", () => {
    const codes = (text: string) => read(`rootfast: 1\n${text}`).problems.map((problem) => problem.code);
    expect(codes("columns:\n  a:\n    from: 3 ft\n")).toEqual(["point.parts"]);
    expect(codes("columns:\n  a:\n    from: 3, 21 ft\n")).toEqual(["quantity.no-unit"]);
    expect(codes("columns:\n  a:\n    line of: 2.5\n")).toEqual(["number.bounds"]);
    expect(codes("columns:\n  a:\n    section: HSS6x6x1\n")).toEqual(["section.unknown"]);
    expect(codes("colums:\n  a: 1\n")).toEqual(["shape.unknown-key"]);
    expect(codes("columns: 3\n")).toEqual(["shape.wrong-kind"]);
    expect(codes("columns:\n")).toEqual([]);
    expect(codes("confirm: all of it\n")).toEqual(["shape.wrong-kind"]);
    expect(codes("given:\n  a: high\n  b: 3 + 4 ft\n  c: {x: 1}\n  d:\n")).toEqual(["given.not-a-value", "given.calculation", "shape.wrong-kind", "shape.no-value"]);
  });

  test("in a value that is repeated is told once, with the place of the repeat", () => {
    const text = "rootfast: 1\nfoundations:\n  a: &a\n    depth: 7\n  b:\n    <<: *a\n  c: *a\n";
    const { problems } = read(text);
    expect(problems.map((problem) => problem.code)).toEqual(["quantity.no-unit"]);
    expect(problems[0].related?.map((related) => slice(text, related.span))).toEqual(["*a", "*a"]);
  });

  test("is not told again where YAML itself is broken", () => {
    const text = "rootfast: 1\nground:\n  till:\n    kind: soil\nfoundations:\n  pier:\n    dowels: {spacing: = max(9 in, 8 in), hole: 1 in}\n    depth: 7\n    diam\n    ground: tll\n";
    expect(read(text).problems.map((problem) => problem.code)).toEqual(["yaml.flow-comma", "yaml.no-colon", "quantity.no-unit"]);
  });
});

describe("short and long forms", () => {
  const bare = (value: unknown): unknown => {
    if (value === undefined || value === null || typeof value !== "object") return value;
    if ("value" in value && "path" in value) return { path: (value as Located<unknown>).path, value: bare((value as Located<unknown>).value) };
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, bare(inner)]));
  };
  const base = (body: string) => `rootfast: 1\nbases:\n  A:\n    ${body}\n    grout: 1 in\n`;
  const rows: [string, string, string][] = [
    ["plate", "plate: 14 in x 12 in x 1 in", "plate:\n      width: 14 in\n      length: 12 in\n      thickness: 1 in"],
    ["plate in quotes", "plate: '14 in x 12 in x 1 in' # of the shop", "plate:\n      width: 14 in\n      length: 12 in\n      thickness: 1 in # of the shop"],
    [
      "anchors",
      "anchors: 4 x 1 in F1554 Gr 36, headed, 20 in deep, 10 in square",
      "anchors:\n      count: 4\n      diameter: 1 in\n      grade: F1554 Gr 36\n      end: headed\n      embedment: 20 in\n      spacing x: 10 in\n      spacing y: 10 in",
    ],
  ];
  for (const ending of ["\n", "\r\n"]) {
    test.each(rows)(`of %s say the same, and the conversion keeps the rest (${JSON.stringify(ending)})`, (_title, short, long) => {
      const text = base(short).replaceAll("\n", ending);
      const { values, problems } = read(text);
      expect(problems).toEqual([]);
      const record = values.bases?.value.get("A")?.value;
      const key = short.startsWith("plate") ? "plate" : "anchors";
      const located = record?.[key] as Located<unknown>;
      const fix = shortToLong(located, notebook.fields.bases.of.fields[key]);
      const converted = applied(text, { fixes: fix ? [fix] : [] } as never);
      expect(converted).toBe(base(long).replaceAll("\n", ending));
      expect(bare(read(converted).values.bases)).toEqual(bare(values.bases));
      const spelled = read(converted).values.bases?.value.get("A")?.value[key] as Located<unknown>;
      expect(shortToLong(spelled, notebook.fields.bases.of.fields[key])).toBeUndefined();
    });
  }

  test("inside { } the conversion stays inside", () => {
    const text = "rootfast: 1\nbases: {A: {plate: 14 in x 12 in x 1 in, grout: 1 in}}\n";
    const plate = read(text).values.bases?.value.get("A")?.value.plate as Located<unknown>;
    const fix = shortToLong(plate, notebook.fields.bases.of.fields.plate);
    expect(applied(text, { fixes: [fix] } as never)).toBe("rootfast: 1\nbases: {A: {plate: { width: 14 in, length: 12 in, thickness: 1 in }, grout: 1 in}}\n");
  });

  test("a part of a short form is placed at that part", () => {
    const text = base("plate: 14 in x 12 x 1 in");
    const [problem] = read(text).problems;
    expect(slice(text, problem.span)).toBe("12");
    expect(applied(text, problem)).toBe(base("plate: 14 in x 12 in x 1 in"));
  });

  test("JSON of the same shape reads the same", () => {
    const yaml = "rootfast: 1\nbases:\n  A:\n    plate: 14 in x 12 in x 1 in\ngiven:\n  h: 9 ft\ncolumns:\n  a:\n    height: = h + 1 in\n    at: 3 ft, 2 ft\n";
    const json = '{"rootfast": 1, "bases": {"A": {"plate": "14 in x 12 in x 1 in"}}, "given": {"h": "9 ft"},\n "columns": {"a": {"height": "= h + 1 in", "at": ["3 ft", "2 ft"]}}}';
    const [one, other] = [read(yaml), read(json)];
    expect(other.problems).toEqual([]);
    expect(other.values.columns?.value.get("a")?.value.height?.value).toBeCloseTo(9 * foot + inch, 12);
    expect(other.values.columns?.value.get("a")?.value.at?.value).toEqual({ x: 3 * foot, y: 2 * foot });
    expect(bare(other.values.bases)).toEqual(bare(one.values.bases));
  });
});
