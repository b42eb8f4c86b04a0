/**
 * The words of statistics in the languages of the headers, as `plainStatistic` spells them: lower
 * case, accents and points off, one blank between words; ø, æ and ł stay, for nothing takes them apart.
 */

export type Statistic =
  | 'mean'
  | 'median'
  | 'deviation'
  | 'least'
  | 'most'
  | 'count'
  | 'sum'
  | 'other';

export type StatisticWords = Readonly<Partial<Record<Statistic, string>>>;

/** May stand before or behind a panel's name. */
export const besideNames: StatisticWords = {
  mean: `mean|average|avg|ave|mittelwert|durchschnitt|moyenne|promedio|gemiddelde|srednia|medelvarde|
    gennemsnit|gjennomsnitt|prumer|ortalama|keskiarvo|atlag|mw|schnitt|ø|⌀|priemer|medie|medie aritmetica|prosjek|prosek|
    povprecje|keskmine|vidurkis|videjais|videja vertiba|середнє|середнє значення|средно|средна стойност|μεσος ορος|μεση τιμη|평균|평균값`,
  median: 'median|mediane|mediana',
  deviation: `std|stdev|std dev|standard deviation|sd|s d|σ|sigma|standardabweichung|stabw|
    ecart type|desviacion estandar|deviazione standard|standaardafwijking|desvio padrao`,
  other: `subtotal|sub total|zwischensumme|zwischenmittel|sous total|subtotale|subtotaal`,
};
/** May stand behind a panel's name. */
export const behindNames: StatisticWords = {
  mean: 'mittel|moy|gem|gns|medel|snitt|среднее|平均|平均值|平均値|均值',
  least: 'min|minimum|minimo',
  most: 'max|maximum|massimo|maximo',
  count: 'count|anzahl|aantal',
  sum: 'total|sum|summe|somme|somma|suma|сумма|合計',
  other: 'cov|cv|range|spannweite',
};
/** Too short or too common to be looked for beside a name. */
export const onlyAlone: StatisticWords = {
  mean: `ср|media|media aritmetica|prom|sr|overall|mean value|
    gesamtdurchschnitt|gesamtmittelwert|gesamtmittel|moyenne generale|media generale|media general|
    average value|valor medio|valore medio|valeur moyenne|middelverdi|middelværdi|
    aritmeticky prumer|prumerna hodnota|wartosc srednia|srednia arytmetyczna|aritmetik ortalama|
    atlagertek|szamtani atlag|medeltal|среднее значение|среднии`,
  median: 'med|mediaan|mediaani|medyan|ortanca|медиана|中位数|中央値',
  deviation: `std abw|st afw|st afwijking|stand afw|std afw|standaard afw|st abw|s abw|stand abw|ec type|ectype|stafw|stafwijking|standafw|sabw|desvtip|devst|desv|desv tip|dev st|
    std avv|st avv|odch stand|smerod odch|sm odchylka|stdafv|dev std|desv est|desv std|desviacion tipica|scarto tipo|standaarddeviatie|
    odchylenie standardowe|odch std|smerodatna odchylka|sm odch|smer odchylka|standart sapma|
    std sapma|keskihajonta|hajonta|szoras|standardavvikelse|std avvikelse|standardavvik|
    standardafvigelse|spredning|stdabw|st dev|стандартное отклонение|ско|标准差|标准偏差|標準差|
    標準偏差|smerodajna odchylka|abatere standard|deviatie standard|standardna devijacija|standardni odklon|
    standardhalve|standartinis nuokrypis|standartnovirze|стандартне відхилення|стандартно отклонение|τυπικη αποκλιση|표준편차|stdafw|std avv|s dev`,
  least: `↓|mini|minimi|minimaal|minst|mindste|minsta|minste|lagsta|laveste|pienin|legkisebb|
    en az|en kucuk|en dusuk|nejmensi|nejnizsi|najmniejsza|najmniejszy|menor|menor valor|мин|минимум|
    最小|最小值|最小値|lowest|kleinstwert|kleinster wert|niedrigster wert|tiefstwert|minimalwert|valor minimo|
    valore minimo|minim|valoare minima|najmensia|najmanji|najmanja vrijednost|najmanjsi|мінімум|мін|минимална|ελαχιστο|ελαχιστη|최소|최소값|최솟값|vahim|vähim|maziausias|mazaka|valeur min|valeur minimale|laagste|laagste waarde`,
  most: `↑|maksimum|maksimi|maxi|maximaal|storst|storste|største|storsta|hogsta|højeste|høyeste|
    suurin|legnagyobb|en cok|en fazla|en buyuk|en yuksek|nejvetsi|nejvyssi|najwieksza|najwiekszy|
    maior|maior valor|макс|максимум|最大|最大值|最大値|highest|grosstwert|grosster wert|hochster wert|
    hochstwert|maximalwert|valor maximo|valore massimo|maxim|maks|najvacsia|najveci|najveca vrijednost|najvecji|максимална|μεγιστο|μεγιστη|최대|최대값|최댓값|suurim|didziausias|lielaka|valeur max|valeur maximale|hoogste|
    hoogste waarde`,
  count: `n°|anz|nombre|numero|num|個数|数|測定回数|n readings|n points|cantidad|conteggio|contagem|
    quantidade|liczba|liczba pomiarow|ilosc|antal|antall|antal matningar|antal malinger|
    antall malinger|pocet|pocet mereni|sayı|adet|olcum sayisi|lukumaara|kpl|darab|darabszam|
    number of readings|no of readings|reading count|total readings|total count|anzahl messungen|
    anzahl messwerte|nombre de mesures|numero de medidas|numero de lecturas|numero misure|
    aantal metingen|количество|кол во|个数|数量|件数|データ数|測定数|numar|numar masuratori|broj|broj mjerenja|stevilo|število|arv|mootmiste arv|kiekis|skaits|кількість|брой|πληθος|개수|갯수|측정수`,
  sum: `som|soma|totale|gesamt|summa|soucet|celkem|toplam|yhteensa|osszeg|osszesen|
    сума|общо|разом|spolu|suma spolu|ukupno|zbroj|zbir|skupaj|vsota|kokku|summa kokku|is viso|kopa|σύνολο|συνολο|αθροισμα|합계|suma totala|итого|razem|lacznie|ogolem|合计|总和|grand total|total general`,
  other: `percentile|quantile|quartile|quantil|perzentil|quartil|percentil|quartile inferiore|lower quartile|upper quartile|q1|q3|iqr|
    rms|mode|modus|modalwert|geometric mean|geometrisches mittel|harmonic mean|std error|standard error|standardfehler|sem|ci|95% ci|95 % ci|confidence interval|konfidenzintervall|vertrauensbereich|verdict|urteil|gesamturteil|min max|max min|span|bereich|streuung|scatter|spread|dispersion|dispersione|spreiding|rozrzut|cv %|cov %|rsd|rsd %|usl|lsl|ucl|lcl|upper limit|lower limit|upper spec limit|
    lower spec limit|oberer grenzwert|unterer grenzwert|obere grenze|untere grenze|
    variationskoeffizient|coefficient of variation|etendue|rango|amplitude|rozpeti|rozstep|
    vaihteluvali|terjedelem|variationsbredd|variance|varianz|rozptyl|varyans|varianssi|размах|极差|
    範囲`,
};
