/** Words in which people say what is to be done to a vehicle, and what to write instead. */
import type { Advice } from '../json/advised.ts';

type Meant = readonly (readonly [pattern: RegExp, advice: string])[];

const meaning =
  (words: Meant): Advice =>
  (value) => {
    if (typeof value === 'object') return undefined;
    const text = String(value).trim().toLowerCase();
    return words.find(([pattern]) => pattern.test(text))?.[1];
  };

export const wheelsAdvice = meaning([
  [/^(true|yes|face|faces|on the car)$/, '"on" cleans them on the vehicle, "off" takes them off'],
  [/^(false|no)$/, 'write "none" to leave them alone'],
  [/^(removed|remove|barrel|barrels)$/, 'wheels that come off the vehicle are "off"'],
]);

export const protectionAdvice = meaning([
  [/ceramic|quartz|sio2|graphene/, 'a hard coating of any kind is "coating"'],
  [/carnauba|paste/, 'write "wax"'],
  [/polymer|acrylic|ptfe|synthetic/, 'write "sealant"'],
  [/^(false|no|bare)$/, 'write "none"'],
]);

export const decontaminationAdvice = meaning([
  [/^(true|yes|all|both)$/, 'write "full": iron, tar and clay'],
  [/^(false|no|done)$/, 'write "none" where it is done already'],
  [/iron|fallout|tar/, '"chemical" is iron and tar remover without clay'],
]);

export const arrivalAdvice = meaning([
  [/^(clean|low|good|fine)$/, 'write "light"'],
  [/^(normal|medium|average|ok)$/, 'write "usual"'],
  [/^(dirty|bad|very|filthy|extreme|poor)/, 'write "heavy"'],
]);
