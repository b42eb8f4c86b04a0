/** Text → bytes in the encodings that an export may come in; for tests only. */

/** The bytes of each character of a page, asked of the platform's decoder byte by byte. */
function bytesByCharacter(label: string, double: boolean): ReadonlyMap<string, readonly number[]> {
  const map = new Map<string, readonly number[]>();
  const decoder = new TextDecoder(label, { fatal: true, ignoreBOM: true });
  const add = (...bytes: number[]): void => {
    try {
      const text = decoder.decode(Uint8Array.from(bytes));
      if ([...text].length === 1 && !map.has(text)) map.set(text, bytes);
    } catch {}
  };
  for (let one = 0; one < 256; one += 1) add(one);
  if (double) {
    for (let lead = 0x81; lead < 0xff; lead += 1) {
      for (let trail = 0x40; trail < 0xff; trail += 1) add(lead, trail);
    }
  }
  return map;
}

/** Characters of the DOS pages that tests write, by the Unicode Consortium's CP850.TXT and CP437.TXT. */
const dos: ReadonlyMap<string, readonly number[]> = new Map(
  Object.entries({
    ü: 0x81,
    é: 0x82,
    â: 0x83,
    ä: 0x84,
    à: 0x85,
    å: 0x86,
    ç: 0x87,
    ê: 0x88,
    è: 0x8a,
    Ä: 0x8e,
    Å: 0x8f,
    É: 0x90,
    æ: 0x91,
    ô: 0x93,
    ö: 0x94,
    Ö: 0x99,
    Ü: 0x9a,
    á: 0xa0,
    í: 0xa1,
    ó: 0xa2,
    ú: 0xa3,
    ñ: 0xa4,
    ß: 0xe1,
    µ: 0xe6,
  }).map(([character, byte]) => [character, [byte]]),
);
/** CP1252.TXT: where it differs from ISO 8859-1, which the platform takes it for. */
const western = '€\0‚ƒ„…†‡ˆ‰Š‹Œ\0Ž\0\0‘’“”•–—˜™š›œ\0žŸ';

const pages = new Map<string, ReadonlyMap<string, readonly number[]>>();
function pageOf(name: string): ReadonlyMap<string, readonly number[]> {
  const made = pages.get(name) ?? makePage(name);
  pages.set(name, made);
  return made;
}
function makePage(name: string): ReadonlyMap<string, readonly number[]> {
  if (name === 'cp850' || name === 'cp437') return dos;
  if (name !== 'windows-1252') return bytesByCharacter(name, /shift|gb|euc/u.test(name));
  const upper = [...western].map((character, k) => [character, [0x80 + k]] as const);
  const latin1 = Array.from(
    { length: 0x60 },
    (_, k) => [String.fromCharCode(0xa0 + k), [0xa0 + k]] as const,
  );
  return new Map([...upper, ...latin1]);
}

/** `utf-8`, `utf-8-bom`, `utf-16le`, `utf-16be`, each of the latter with `-bom` as well, or a page's name. */
export function encode(text: string, name: string): Uint8Array {
  if (name.endsWith('-bom')) return encode(`\ufeff${text}`, name.slice(0, -'-bom'.length));
  if (name === 'utf-8') return new TextEncoder().encode(text);
  if (name.startsWith('utf-16')) {
    const units = Array.from({ length: text.length }, (_, k) => text.charCodeAt(k));
    return Uint8Array.from(
      units.flatMap((unit) =>
        name === 'utf-16le' ? [unit & 0xff, unit >> 8] : [unit >> 8, unit & 0xff],
      ),
    );
  }
  const page = pageOf(name);
  return Uint8Array.from(
    [...text].flatMap((character) => {
      if (character < '\u0080') return [character.charCodeAt(0)];
      const bytes = page.get(character);
      if (bytes === undefined) throw new Error(`${name} has no ${character}`);
      return [...bytes];
    }),
  );
}
