/** The numbers that a quote is reckoned by, in per cent. */
export type QuoteModel = {
  /** Share of such jobs done within the hours that are charged, by kind of document. */
  readonly hours: { readonly estimate: number; readonly quotation: number };
  /** Share of a price over which the least coin is asked about. */
  readonly cash: { readonly coarse: number };
  /** From how many of one material, or under what a pack holds, it is asked about; the minutes of labour that a price by the unit stays under. */
  readonly packs: { readonly most: number; readonly least: number; readonly byUnit: number };
  /** The aims that the curve is drawn through. */
  readonly curve: { readonly from: number; readonly step: number };
};
