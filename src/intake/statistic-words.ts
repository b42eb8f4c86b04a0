/** Words of statistics: `Mean`, `std. dev.`, `average of 2`, `bonnet mean`. */
const middles =
  'mean|average|avg|ave|median|mittelwert|durchschnitt|moyenne|std|stdev|std dev|standard deviation|sd|s d|σ|sigma|ø|⌀|x̄';
const others = 'min|minimum|max|maximum|cov|cv|range|count|total|sum';
const alone = new RegExp(`^(?:${middles}|${others})$`, 'u');
/** `mean of 5`, `avg 1-2`, `mean (n=5)`, `1-2 avg`: never with `min`, which may be minutes. */
const numbered = new RegExp(
  `^(?:(?:${middles})(?: of)?(?: n)? \\d+(?: \\d+)?|\\d+(?: \\d+)? (?:${middles}))$`,
  'u',
);
const besideName = new RegExp(`(?:^(?:${middles}) (?:of )?\\S|\\S (?:${middles}|${others})$)`, 'u');

/** `Std. Dev.` → `std dev`, as the words are compared. */
export const plainStatistic = (text: string): string =>
  text
    .toLowerCase()
    .replace(/\./gu, '')
    .replace(/[_:=()[\]/\s–-]+/gu, ' ')
    .trim();

/** Whether a cell is a word of statistics and nothing more. */
export const isStatistic = (text: string): boolean => {
  const words = plainStatistic(text);
  return alone.test(words) || numbered.test(words);
};

/** Whether a name of a panel is, or carries, a word of statistics. */
export const namesStatistic = (text: string): boolean =>
  isStatistic(text) || besideName.test(plainStatistic(text));
