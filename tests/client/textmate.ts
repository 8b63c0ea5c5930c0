/** Enough of a TextMate tokenizer to say which scopes a line gets: match, begin and end, begin and while, captures, includes. */

export interface Rule {
  readonly include?: string;
  readonly match?: string;
  readonly begin?: string;
  readonly end?: string;
  readonly while?: string;
  readonly name?: string;
  readonly contentName?: string;
  readonly captures?: Readonly<Record<string, { readonly name: string }>>;
  readonly beginCaptures?: Rule["captures"];
  readonly endCaptures?: Rule["captures"];
  readonly patterns?: readonly Rule[];
}
export interface Grammar {
  readonly patterns: readonly Rule[];
  readonly repository: Readonly<Record<string, Rule>>;
}
interface Open {
  readonly rule: Rule;
  readonly begun: RegExpExecArray;
}

const compiled = (source: string): RegExp => new RegExp(source, "dgu");

const flat = (grammar: Grammar, rules: readonly Rule[]): Rule[] =>
  rules.flatMap((rule) => {
    const target = rule.include === undefined ? rule : grammar.repository[rule.include.slice(1)];
    return target.match !== undefined || target.begin !== undefined ? [target] : flat(grammar, target.patterns ?? []);
  });

/** A later expression with `\1` standing for what the first one caught. */
const recalled = (source: string, begun: RegExpExecArray): RegExp =>
  compiled(source.replace(/\\(\d)/gu, (_, group: string) => (begun[Number(group)] ?? "").replace(/[^\w\s]/gu, "\\$&")));

const at = (regex: RegExp, line: string, from: number): RegExpExecArray | null => {
  regex.lastIndex = from;
  return regex.exec(line);
};

/** For each line the scopes of each of its characters, innermost last. */
export const scopesOf = (grammar: Grammar, text: string): string[][][] => {
  const stack: Open[] = [];
  return text.split("\n").map((line) => {
    const scopes: string[][] = Array.from(line, () => []);
    const add = (from: number, to: number, name: string | undefined) => {
      if (name !== undefined) for (let i = from; i < to; i++) scopes[i].push(name);
    };
    const addAll = (found: RegExpExecArray, captures: Rule["captures"]) => {
      for (const [group, { name }] of Object.entries(captures ?? {})) {
        const range = found.indices?.[Number(group)];
        if (range) add(range[0], range[1], name);
      }
    };
    let from = 0;
    while (stack.length > 0 && stack.at(-1)?.rule.while !== undefined) {
      const { rule, begun } = stack.at(-1) as Open;
      const held = at(recalled(rule.while as string, begun), line, from);
      if (held?.index === from) {
        add(from, line.length, rule.contentName);
        from = Math.max(from, held.index + held[0].length);
        break;
      }
      stack.pop();
    }
    for (let guard = 0; from <= line.length && guard < 1000; guard++) {
      const open = stack.at(-1);
      const ending = open?.rule.end === undefined ? null : at(recalled(open.rule.end, open.begun), line, from);
      let best: { readonly rule: Rule; readonly found: RegExpExecArray } | undefined;
      for (const rule of flat(grammar, open ? (open.rule.patterns ?? []) : grammar.patterns)) {
        const found = at(compiled(rule.match ?? (rule.begin as string)), line, from);
        if (found && (!best || found.index < best.found.index)) best = { rule, found };
      }
      if (open && ending && (!best || ending.index <= best.found.index)) {
        const to = ending.index + ending[0].length;
        add(from, to, open.rule.name);
        addAll(ending, open.rule.endCaptures);
        stack.pop();
        from = to;
        continue;
      }
      if (!best) {
        if (open?.rule.end !== undefined) add(from, line.length, open.rule.name);
        break;
      }
      const { rule, found } = best;
      const to = found.index + found[0].length;
      if (open?.rule.end !== undefined) add(from, to, open.rule.name);
      add(found.index, to, rule.name);
      addAll(found, rule.match === undefined ? rule.beginCaptures : rule.captures);
      if (rule.match === undefined) stack.push({ rule, begun: found });
      from = to === found.index && rule.match !== undefined ? to + 1 : to;
    }
    return scopes;
  });
};

/** The innermost scope of the first place where `part` stands in the last line of the text. */
export const scopeAt = (grammar: Grammar, text: string, part: string): string | undefined => {
  const last = text.slice(text.lastIndexOf("\n") + 1);
  const index = last.indexOf(part);
  if (index < 0) throw new Error(`"${part}" is not in "${last}".`);
  const inner = scopesOf(grammar, text).at(-1)?.slice(index, index + part.length).map((scopes) => scopes.at(-1));
  return new Set(inner).size === 1 ? inner?.[0] : `mixed: ${[...new Set(inner)].join(" ")}`;
};
