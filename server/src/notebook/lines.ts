/** Offsets to lines and characters and back, UTF-16 as editors count. Lines end with LF, CRLF or CR. */
export class LineIndex {
  private readonly starts: readonly number[];

  constructor(readonly text: string) {
    const starts = [0];
    for (let i = 0; i < text.length; i += 1) {
      const code = text.charCodeAt(i);
      if (code === 13 && text.charCodeAt(i + 1) === 10) continue;
      if (code === 10 || code === 13) starts.push(i + 1);
    }
    this.starts = starts;
  }

  get lineCount(): number {
    return this.starts.length;
  }

  positionAt(offset: number): { line: number; character: number } {
    const at = Math.max(0, Math.min(offset, this.text.length));
    let low = 0;
    let high = this.starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.starts[middle] <= at) low = middle;
      else high = middle - 1;
    }
    return { line: low, character: at - this.starts[low] };
  }

  offsetAt(position: { line: number; character: number }): number {
    if (position.line < 0) return 0;
    if (position.line >= this.starts.length) return this.text.length;
    const start = this.starts[position.line];
    const end = position.line + 1 < this.starts.length ? this.starts[position.line + 1] : this.text.length;
    return Math.max(start, Math.min(start + position.character, end));
  }
}
