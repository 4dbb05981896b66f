/** What a printer can use of a page, mm. `paper` is the page's name, for the sentence. */
export interface Frame {
  readonly paper: string;
  readonly widthMm: number;
  readonly heightMm: number;
}
