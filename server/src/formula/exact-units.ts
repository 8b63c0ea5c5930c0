import { all, create, type MathNode, type Unit as MathUnit } from "mathjs";

/**
 * All of mathjs with its units, made exact. Used by the units proof alone. Its kip and psi are rounded, and the trade's
 * short names are missing: both are created from pound-force, inch and foot (NIST SP 811).
 */
export const math = create(all, { predictable: false });

const definitions: readonly (readonly [name: string, definition: string])[] = [
  ["kip", "1000 lbf"],
  ["psi", "1 lbf/inch^2"],
  ["ksi", "1000 lbf/inch^2"],
  ["psf", "1 lbf/ft^2"],
  ["ksf", "1000 lbf/ft^2"],
  ["pcf", "1 lbf/ft^3"],
  ["pci", "1 lbf/inch^3"],
  ["plf", "1 lbf/ft"],
  ["klf", "1000 lbf/ft"],
  ["mph", "0.44704 m/s"],
];
for (const [name, definition] of definitions) math.createUnit(name, { definition }, { override: true });

/** A unit of ours as mathjs spells it: `kN·m/m²` is `kN*m/m^2`; the lb of the trade is a force. */
export function mathjsUnit(text: string): string {
  return text
    .replaceAll("²", "^2")
    .replaceAll("³", "^3")
    .replaceAll("⁴", "^4")
    .replaceAll("·", "*")
    .replaceAll(/(?<=[a-z])-(?=[a-z])/gi, "*")
    .replaceAll(/\blb\b/g, "lbf")
    .replaceAll(/\bin\b/g, "inch");
}

export const isUnit = (value: unknown): value is MathUnit => math.typeOf(value) === "Unit";

const angleExponent = 7;

/** The same quantity with its angles as plain numbers, in radians: mathjs counts an angle as a dimension of its own. */
export function withoutAngles(value: unknown): unknown {
  if (!isUnit(value)) return value;
  const exponent = (value as unknown as { dimensions: number[] }).dimensions[angleExponent];
  if (!exponent) return value;
  const rest: unknown = math.multiply(value, math.pow(math.unit(1, "rad"), -exponent));
  return isUnit(rest) && (rest as unknown as { dimensions: number[] }).dimensions.every((d) => Math.abs(d) < 1e-12) ? Number((rest as unknown as { value: number }).value) : rest;
}

const comparing = new Set(["<", "<=", ">", ">=", "==", "!=", "+", "-"]);

/**
 * Gives a literal zero the units of what it is compared or added to: `max(0, x)` and `x > 0` are sound, and mathjs has no
 * zero that fits every unit.
 */
export function zerosFit(root: MathNode): MathNode {
  const isZero = (n: any) => n?.type === "ConstantNode" && n.value === 0;
  const like = (n: MathNode) => new math.OperatorNode("*" as any, "multiply" as any, [new math.ConstantNode(0), new math.ParenthesisNode(n)]);
  return root.transform((node: any) => {
    const mixes = (node.type === "OperatorNode" && comparing.has(node.op)) || (node.type === "FunctionNode" && ["min", "max"].includes(node.fn.name));
    if (mixes && node.args.length > 1) {
      const other = node.args.find((arg: any) => !isZero(arg));
      if (other && node.args.some(isZero)) node.args = node.args.map((arg: any) => (isZero(arg) ? like(other.cloneDeep()) : arg));
    }
    return node;
  });
}
