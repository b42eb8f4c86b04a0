/** Something a result has to say: a stable code for machines, a sentence for people, maybe a figure. */
export type Remark = { readonly code: string; readonly text: string; readonly value?: number };

export const remark = (code: string, text: string, value?: number): Remark =>
  value === undefined ? { code, text } : { code, text, value };
