/**
 * Words of statistics, in the languages of the headers: `Mean`, `std. dev.`, `Mittelwert`,
 * `average of 2`, `bonnet mean`, and which statistic each names.
 */
import { splitUnit } from '../cells/unit.ts';

export type Statistic =
  | 'mean'
  | 'median'
  | 'deviation'
  | 'least'
  | 'most'
  | 'count'
  | 'sum'
  | 'other';

/** May stand before or behind a panel's name. */
const middles: Readonly<Partial<Record<Statistic, string>>> = {
  mean: 'mean|average|avg|ave|mittelwert|durchschnitt|moyenne|promedio|gemiddelde|srednia|medelvarde|gennemsnit|ø|⌀',
  median: 'median|mediane|mediana',
  deviation:
    'std|stdev|std dev|standard deviation|sd|s d|σ|sigma|standardabweichung|stabw|ecart type|desviacion estandar|deviazione standard|standaardafwijking|desvio padrao',
};
/** May stand behind a panel's name. */
const behind: Readonly<Partial<Record<Statistic, string>>> = {
  least: 'min|minimum|minimo',
  most: 'max|maximum|massimo|maximo',
  count: 'count|anzahl|aantal',
  sum: 'total|sum|summe',
  other: 'cov|cv|range|spannweite',
};
/** Too short or too common to be looked for beside a name. */
const onlyAlone: Readonly<Partial<Record<Statistic, string>>> = {
  mean: 'mittel|mw|moy|media|media aritmetica|prom|gem|sr|medel|gns|overall|mean value|average value|valor medio|valore medio|valeur moyenne|среднее|среднее значение|среднии|平均|平均值|平均値|均值',
  median: 'mediaan|медиана|中位数|中央値',
  deviation:
    'std abw|dev std|desv est|desv std|desviacion tipica|scarto tipo|standaarddeviatie|odchylenie standardowe|odch std|standardavvikelse|standardafvigelse|stdabw|st dev|стандартное отклонение|ско|标准差|标准偏差|標準差|標準偏差|stdafw|std avv|s dev',
  least:
    '↓|mini|minimaal|minst|mindste|мин|минимум|最小|最小值|最小値|lowest|kleinster wert|niedrigster wert|tiefstwert|minimalwert|valor minimo|valore minimo|valeur min|valeur minimale|laagste|laagste waarde',
  most: '↑|maksimum|maksimi|maxi|maximaal|storst|storste|макс|максимум|最大|最大值|最大値|highest|grosster wert|hochster wert|hochstwert|maximalwert|valor maximo|valore massimo|valeur max|valeur maximale|hoogste|hoogste waarde',
  count:
    'anz|nombre|numero|num|個数|数|測定回数|n readings|n points|cantidad|conteggio|contagem|quantidade|liczba|ilosc|antal|number of readings|no of readings|reading count|total readings|total count|anzahl messungen|anzahl messwerte|nombre de mesures|numero de medidas|numero de lecturas|numero misure|aantal metingen|количество|кол во|个数|数量|件数|データ数|測定数',
  sum: 'somme|suma|somma|som|soma|totale|gesamt|сумма|итого|合计|总和|合計|grand total|subtotal',
  other:
    'cv %|cov %|rsd|rsd %|usl|lsl|ucl|lcl|upper limit|lower limit|upper spec limit|lower spec limit|oberer grenzwert|unterer grenzwert|obere grenze|untere grenze|variationskoeffizient|coefficient of variation|etendue|rango|amplitude|variance|varianz|размах|极差|範囲',
};

type Words = {
  readonly kinds: ReadonlyMap<string, Statistic>;
  readonly numbered: RegExp;
  readonly beside: RegExp;
};
let words: Words | undefined;

function wordsOfStatistics(): Words {
  if (words !== undefined) return words;
  const kinds = new Map<string, Statistic>();
  for (const group of [middles, behind, onlyAlone]) {
    for (const [kind, list] of Object.entries(group) as [Statistic, string][]) {
      for (const word of list.split('|')) kinds.set(plainStatistic(word), kind);
    }
  }
  const before = Object.values(middles).join('|');
  const after = [...Object.values(middles), ...Object.values(behind)].join('|');
  words = {
    kinds,
    // `mean of 5`, `avg 1-2`, `mean (n=5)`, `1-2 avg`: never with `min`, which may be minutes.
    numbered: new RegExp(
      `^(?:(${before})(?: of)?(?: n)? \\d+(?: \\d+)?|\\d+(?: \\d+)? (${before}))$`,
      'u',
    ),
    beside: new RegExp(`(?:^(?:${before}) (?:of )?\\S|\\S (?:${after})$)`, 'u'),
  };
  return words;
}

/** `Mean (µm)` → `Mean`. */
function withoutUnit(text: string): string {
  const { label, unit } = splitUnit(text);
  return unit === undefined || label === '' ? text : label;
}

/** `Std. Dev.` → `std dev`, `x̄` → `⌀`, as the words are compared. */
export const plainStatistic = (text: string): string =>
  withoutUnit(text)
    .normalize('NFKD')
    .toLowerCase()
    .replace(/x\u0304/gu, '⌀')
    .replace(/\p{M}/gu, '')
    .replace(/ß/gu, 'ss')
    .replace(/\./gu, '')
    .replace(/[_:=()[\]/\s–-]+/gu, ' ')
    .trim();

/** The statistic a cell names by one word and nothing more. */
export function statisticNamed(text: string): Statistic | undefined {
  const plain = plainStatistic(text);
  const { kinds, numbered } = wordsOfStatistics();
  const kind = kinds.get(plain);
  if (kind !== undefined) return kind;
  const match = /\d/u.test(plain) ? numbered.exec(plain) : null;
  return match === null ? undefined : kinds.get(match[1] ?? match[2] ?? '');
}

/** Whether a cell is a word of statistics and nothing more. */
export const isStatistic = (text: string): boolean => statisticNamed(text) !== undefined;

/** Whether a name of a panel is, or carries, a word of statistics. */
export const namesStatistic = (text: string): boolean => {
  const plain = plainStatistic(text);
  return isStatistic(text) || (wordsOfStatistics().beside.test(plain) && !avantGauche.test(plain));
};
/** `Porte AVG` is the front left door of a French car. */
const avantGauche = /^(?:porte|portiere|aile) avg$/u;

/** The statistic in `bonnet mean` or `Mittelwert Dach`. */
export function statisticBeside(text: string): Statistic | undefined {
  const alone = statisticNamed(text);
  if (alone !== undefined) return alone;
  const parts = plainStatistic(text).split(' ');
  const { kinds } = wordsOfStatistics();
  return kinds.get(parts.at(-1) ?? '') ?? kinds.get(parts[0] ?? '');
}

/** Max, Min, Mini, Media: words of statistics that are also names of people and cars. */
export const mayBeName = (text: string): boolean => {
  const plain = plainStatistic(text);
  return (
    /^[a-z]{1,7}$/u.test(plain) && !Object.values(middles).join('|').split('|').includes(plain)
  );
};
