/**
 * The currencies of ISO 4217 by how many digits of them are minor units. A table of our own: that of
 * the platform follows what people write (CLDR), not the standard, and differs for HUF, IDR, MGA and
 * others. Written down from memory; `test/formats/data/currencies.test.ts` says where the two differ.
 */
import type { Currency } from '../../work/money.ts';

const byDigits: Readonly<Record<0 | 2 | 3 | 4, string>> = {
  0: 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF',
  2: `AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BOV BRL BSD BTN BWP BYN BZD
    CAD CDF CHE CHF CHW CNY COP COU CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL
    GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR
    LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MXV MYR MZN NAD NGN NIO NOK NPR NZD
    PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC
    SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD USN UYU UZS VED VES WST XCD YER ZAR ZMW`,
  3: 'BHD IQD JOD KWD LYD OMR TND',
  4: 'CLF UYW',
};

export const currencies: ReadonlyMap<string, Currency> = new Map(
  Object.entries(byDigits).flatMap(([digits, codes]) =>
    codes.split(/\s+/).map((code) => [code, { code, digits: Number(digits) }] as const),
  ),
);

/** What people write instead of a code, and the code it can only mean. */
export const currencyWords: ReadonlyMap<string, string> = new Map([
  ['£', 'GBP'],
  ['pound', 'GBP'],
  ['pounds', 'GBP'],
  ['sterling', 'GBP'],
  ['€', 'EUR'],
  ['euro', 'EUR'],
  ['euros', 'EUR'],
  ['zł', 'PLN'],
  ['kč', 'CZK'],
]);
