/**
 * The open notebooks and the state each is in: changed, then checked. There is no fixed delay: a changed text is checked as
 * soon as the messages already waiting have been read, the newest version only, and what it gives is published with that version.
 */
import { checkText, type Checked } from "../engine/check-text.js";
import { LineIndex } from "../notebook/lines.js";

export interface Session {
  readonly uri: string;
  readonly version: number;
  readonly checked: Checked;
  readonly lines: LineIndex;
  /** The last text without a syntax error, where the present one has some: lenses and hovers keep its values and say so. */
  readonly stale: boolean;
  /** What lenses, hovers and the view show: of the present text, or of the last readable one. */
  readonly shown: Checked;
}

interface Open {
  version: number;
  text: string;
  session?: Session;
  lastGood?: Checked;
}

export interface SessionEvents {
  readonly checked: (session: Session) => void;
  readonly closed: (uri: string) => void;
}

const hasSyntaxError = (checked: Checked): boolean => checked.problems.some((problem) => problem.tier === "syntax" && problem.severity === "error");

export class Sessions {
  private readonly open = new Map<string, Open>();
  private readonly waiting = new Set<string>();

  constructor(private readonly events: SessionEvents) {}

  change(uri: string, version: number, text: string): void {
    const known = this.open.get(uri);
    this.open.set(uri, { session: known?.session, lastGood: known?.lastGood, version, text });
    if (this.waiting.has(uri)) return;
    this.waiting.add(uri);
    // Two turns: the first lets messages that are already here be read, so that only the newest text is checked.
    setImmediate(() => setImmediate(() => this.run(uri)));
  }

  close(uri: string): void {
    this.open.delete(uri);
    this.events.closed(uri);
  }

  /** The session of the newest text; checks it now where that has not happened yet. */
  get(uri: string): Session | undefined {
    const open = this.open.get(uri);
    if (!open) return undefined;
    if (open.session?.version !== open.version) this.run(uri);
    return this.open.get(uri)?.session;
  }

  private run(uri: string): void {
    this.waiting.delete(uri);
    const open = this.open.get(uri);
    if (!open || open.session?.version === open.version) return;
    const checked = checkText(open.text, open.session?.checked);
    const stale = hasSyntaxError(checked);
    if (!stale) open.lastGood = checked;
    open.session = { uri, version: open.version, checked, lines: new LineIndex(open.text), stale, shown: stale ? (open.lastGood ?? checked) : checked };
    this.events.checked(open.session);
  }
}
