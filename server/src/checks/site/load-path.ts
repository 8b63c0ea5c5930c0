/**
 * A link of the chain from roof to ground is missing: roof, column top, column, base plate, anchor rods, foundation, ground. In the field a roof
 * that only rests on its columns is found beside them after the storm.
 *
 * IBC 2021 1604.4: a complete load path from the point of origin to the resisting elements.
 */
import type { Structure, Support } from "../../project/model.js";
import type { RuleDecl, RuleFinding } from "../contract.js";

type Judged = Pick<RuleFinding, "verdict" | "message" | "at">;

const broken = (message: string, at: RuleFinding["at"]): Judged => ({ verdict: "over", message, at });
const unsaid = (message: string, at: RuleFinding["at"]): Judged => ({ verdict: "unchecked", message, at });

const hasReactions = (fields: { readonly reactions?: unknown; readonly combined?: unknown } | undefined): boolean => fields?.reactions !== undefined || fields?.combined !== undefined;

/** The first link missing from the roof down to the top of the column's base, or undefined. */
function aboveBase({ roof }: Structure, { name, column }: Support): Judged | undefined {
  if (!column) return undefined;
  if (hasReactions(column.fields)) return undefined;
  if (!roof) return unsaid(`${name}: nothing loads it. Describe the roof, or give the column's reactions.`, column);
  const top = column.fields["top connection"];
  if (!top) return unsaid(`${name}: what ties the roof to the column top is not described. State the connection under \`top connection\`, with its design uplift strength.`, column);
  if (!top.value.uplift && !top.value.bolts && !top.value.weld) return unsaid(`${name}: the connection at the column top has no stated uplift strength. Give the strength its maker or designer states, or describe its bolts or its weld.`, top);
  return undefined;
}

function fromBaseDown(support: Support): Judged | undefined {
  const { name, column, base, foundation, ground } = support;
  if (column && !base) {
    const said = column.fields.base;
    return broken(said ? `${name}: the load path ends at the column: there is no base named ${said.value}.` : `${name}: the load path ends at the column: it names no base. Say which base plate it stands on under \`base\`.`, said ?? column);
  }
  if (base && !base.fields.plate) return broken(`${name}: the load path ends above base ${base.name}: it has no plate.`, base);
  if (base && !base.fields.anchors) return broken(`${name}: the load path ends at base plate ${base.name}: no anchor rods tie it to the concrete.`, base);
  if (!foundation) {
    const said = column?.fields["stands on"];
    return broken(
      said ? `${name}: the load path ends at the base: there is no foundation named ${said.value}.` : `${name}: the load path ends at the base: no foundation below it is named. Say what the column stands on under \`stands on\`.`,
      said ?? column ?? base ?? support,
    );
  }
  if (!ground) {
    const said = foundation.fields.ground;
    return broken(said ? `${name}: the load path ends at foundation ${foundation.name}: there is no ground named ${said.value}.` : `${name}: the load path ends at foundation ${foundation.name}: it names no ground. Say what it stands in under \`ground\`.`, said ?? foundation);
  }
  if (!ground.fields.kind) return unsaid(`${name}: whether ground ${ground.name} is soil or rock is not said.`, ground);
  return undefined;
}

function judgeSupport(structure: Structure, support: Support): Judged {
  const missing = [aboveBase(structure, support), fromBaseDown(support)].filter((found) => found !== undefined);
  // A broken link is worse news than one not described, wherever it is.
  const first = missing.find(({ verdict }) => verdict === "over") ?? missing[0];
  if (first) return first;
  const { column, base, foundation, name } = support;
  if (!column && !hasReactions(foundation?.fields)) return unsaid(`${name}: no column stands on it and no reactions are given, so that no load path begins here.`, support);
  const chain = [
    ...(column && !hasReactions(column.fields) ? ["roof", "column top"] : []),
    ...(column ? ["column"] : ["the reactions given"]),
    ...(base ? ["base plate", "anchor rods"] : []),
    `foundation ${foundation?.name ?? ""}`,
    `ground ${support.ground?.name ?? ""}`,
  ];
  return { verdict: "holds", message: `${name}: ${chain.join(", ")}: every link is named.`, at: support };
}

export const loadPath: RuleDecl = {
  id: "site.load-path",
  title: "Load path from roof to ground",
  link: "site",
  clause: "IBC 2021 1604.4",
  fails: "A link between roof and ground is missing, and the load has nowhere to go.",
  seen: "A roof that only rested on its columns, found beside them after the storm.",
  range: "Whether each link is named; its strength is for the checks. Where reactions are given by hand, the path begins at the column base. The strength of the connection at the column top is for its own check.",
  judge: (structure) => structure.supports.map((support) => ({ support, ...judgeSupport(structure, support) })),
};
