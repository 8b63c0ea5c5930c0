import { describe, expect, it } from "vitest";
import { strokes } from "../../client/src/view/svg.js";
import { signConvention, signConventionWords } from "../../server/src/drawing/sign-convention.js";
import { arrow, doubleArrow, drawing, head, turn, words } from "../../server/src/drawing/svg.js";

const svg = signConvention();

describe("the drawn sign convention", () => {
  it("names the axes, the forces and the three places", () => {
    for (const word of ["Plan", "Section, looking north", "x, east", "y, north", ">P<", ">Vx<", ">Vy<", ">Mx<", ">My<", ">top<", ">base<", ">underside<"]) expect(svg).toContain(word);
    expect(svg).toContain('role="img"');
    expect(svg).toContain(signConventionWords.slice(0, 40));
  });

  it("is drawn with elements and attributes the view lets in, and with no style, script or link", () => {
    const elements = [...svg.matchAll(/<([a-z]+)/gu)].map(([, name]) => name);
    const attributes = [...svg.matchAll(/\s([a-zA-Z][\w-]*)="/gu)].map(([, name]) => name).filter((name) => name !== "xmlns");
    expect(elements.length).toBeGreaterThan(40);
    expect(elements.filter((name) => !strokes.elements.has(name))).toEqual([]);
    expect(attributes.filter((name) => !strokes.attributes.has(name))).toEqual([]);
  });

  it("is balanced markup in the color of the text around it", () => {
    const opened = [...svg.matchAll(/<([a-z]+)(?:\s[^<>]*?)?(\/?)>/gu)].filter(([, , closed]) => closed === "").map(([, name]) => name);
    const closed = [...svg.matchAll(/<\/([a-z]+)>/gu)].map(([, name]) => name);
    expect(opened.sort()).toEqual(closed.sort());
    expect([...svg.matchAll(/(?:stroke|fill)="([^"]+)"/gu)].map(([, color]) => color).filter((color) => color !== "currentColor" && color !== "none")).toEqual([]);
  });
});

const numbers = (text: string): number[] => [...text.matchAll(/-?\d+(?:\.\d+)?/gu)].map(Number);

describe("strokes", () => {
  it("an arrow's head stands at its end and spreads back toward its start", () => {
    const [, points] = /points="([^"]+)"/u.exec(arrow(0, 0, 50, 0)) ?? [];
    const [x, y, x1, , x2] = numbers(points);
    expect([x, y]).toEqual([50, 0]);
    expect(Math.max(x1, x2)).toBeLessThan(50);
  });

  it("a moment along an axis has two heads", () => {
    expect(doubleArrow(0, 0, 0, -40).match(/<polygon/gu)).toHaveLength(2);
  });

  it("a turn to a larger angle goes clockwise, as a push to the east turns a section seen looking north", () => {
    expect(/A\d+ \d+ 0 (\d) (\d)/u.exec(turn(0, 0, 30, 3.6, 5.8))?.slice(1)).toEqual(["0", "1"]);
    expect(/A\d+ \d+ 0 (\d) (\d)/u.exec(turn(0, 0, 30, 5.8, 3.6))?.slice(1)).toEqual(["0", "0"]);
  });

  it("keeps markup out of words", () => {
    expect(words(0, 0, 'a < "b" & c')).toContain("a &lt; &quot;b&quot; &amp; c");
    expect(drawing(10, 10, '"><script>', [])).not.toContain("<script>");
  });

  it("a head of any angle has three corners of finite numbers", () => {
    for (let angle = 0; angle < 7; angle += 0.5) expect(numbers(/points="([^"]+)"/u.exec(head(1, 2, angle))?.[1] ?? "").filter(Number.isFinite)).toHaveLength(6);
  });
});
