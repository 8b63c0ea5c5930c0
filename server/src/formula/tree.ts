/** The tree every use of a formula is made from: its closure, its printed forms, and the branches of its units proof. */
export type Tree =
  | { readonly type: "number"; readonly value: number }
  | { readonly type: "pi" }
  | { readonly type: "symbol"; readonly name: string }
  | { readonly type: "constant"; readonly name: string }
  | { readonly type: "negate"; readonly of: Tree }
  | { readonly type: "binary"; readonly op: BinaryOp; readonly left: Tree; readonly right: Tree }
  | { readonly type: "call"; readonly name: FunctionName; readonly args: readonly Tree[] }
  | Choice;

/** `when ? yes : no`. */
export interface Choice {
  readonly type: "choice";
  readonly when: Condition;
  readonly yes: Tree;
  readonly no: Tree;
}

export type Condition =
  | { readonly type: "compare"; readonly op: CompareOp; readonly left: Tree; readonly right: Tree }
  | { readonly type: "both" | "either"; readonly left: Condition; readonly right: Condition }
  | { readonly type: "not"; readonly of: Condition };

export type BinaryOp = "+" | "-" | "*" | "/" | "^";
export type CompareOp = "<" | "<=" | ">" | ">=" | "==" | "!=";

/** Functions a formula may call, with the fewest and the most arguments. */
export const functions = {
  min: [1, 12],
  max: [1, 12],
  sqrt: [1, 1],
  cbrt: [1, 1],
  abs: [1, 1],
  exp: [1, 1],
  log: [1, 1],
  sin: [1, 1],
  cos: [1, 1],
  tan: [1, 1],
  asin: [1, 1],
  acos: [1, 1],
  atan: [1, 1],
  atan2: [2, 2],
  floor: [1, 1],
  ceil: [1, 1],
} as const satisfies Record<string, readonly [number, number]>;

export type FunctionName = keyof typeof functions;

export const isFunctionName = (name: string): name is FunctionName => Object.hasOwn(functions, name);

/** The names of symbols and constants in a tree, in the order they first occur. */
export function namesIn(tree: Tree): string[] {
  const names = new Set<string>();
  visit(tree, (t) => {
    if (t.type === "symbol" || t.type === "constant") names.add(t.name);
  });
  return [...names];
}

/** Calls back for every node, parents first. */
export function visit(tree: Tree, each: (tree: Tree) => void): void {
  each(tree);
  switch (tree.type) {
    case "negate":
      return visit(tree.of, each);
    case "binary":
      visit(tree.left, each);
      return visit(tree.right, each);
    case "call":
      return tree.args.forEach((arg) => visit(arg, each));
    case "choice":
      visitCondition(tree.when, each);
      visit(tree.yes, each);
      return visit(tree.no, each);
  }
}

function visitCondition(condition: Condition, each: (tree: Tree) => void): void {
  if (condition.type === "not") return visitCondition(condition.of, each);
  if (condition.type === "compare") {
    visit(condition.left, each);
    return visit(condition.right, each);
  }
  visitCondition(condition.left, each);
  visitCondition(condition.right, each);
}
