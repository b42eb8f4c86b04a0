/** Money for people: the amount with as many digits as the currency has. No locale has a say. */
import { type Currency, type Minor, percentOfShare, type Share } from '../../work/money.ts';

/** `1,234.50`, `−12`; thousands are parted by commas. */
export function amountText(amount: Minor, { digits }: Pick<Currency, 'digits'>): string {
  const sign = amount < 0n ? '−' : '';
  const written = String(amount < 0n ? -amount : amount).padStart(digits + 1, '0');
  const whole = written.slice(0, written.length - digits);
  const parted = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return digits === 0 ? sign + parted : `${sign}${parted}.${written.slice(-digits)}`;
}

/** `1234.50`, as programs read it. */
export const plainAmount = (amount: Minor, currency: Pick<Currency, 'digits'>): string =>
  amountText(amount, currency).replaceAll(',', '').replace('−', '-');

/** `1,234.50 GBP`. */
export const moneyText = (amount: Minor, currency: Currency): string =>
  `${amountText(amount, currency)}\u00a0${currency.code}`;

/** `17.5 %`. */
export const shareText = (share: Share): string => `${percentOfShare(share)}\u00a0%`;
