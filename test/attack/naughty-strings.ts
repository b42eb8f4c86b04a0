/**
 * Strings by their shapes: what has been known to break programs that take text from people, each kind
 * with a few of its own. Written out here; what a terminal, a page or a spreadsheet obeys stands in
 * `test/render/naughty.ts`, and is among them.
 */
import { naughty } from '../render/naughty.ts';

const words: readonly string[] = [
  // Words that a language takes for something else.
  ...['undefined', 'undef', 'null', 'NULL', '(null)', 'nil', 'NIL', 'none', 'None', '\\', '\\\\'],
  ...['true', 'false', 'True', 'TRUE', 'yes', 'no', 'on', 'off', 'hasOwnProperty', 'then'],
];

const numbers: readonly string[] = [
  ...['0', '1', '1.00', '$1.00', '1/2', '1E2', '1E02', '1E+02', '-1', '-1.00', '-$1.00', '-1/2'],
  ...['1/0', '0/0', '-2147483648/-1', '-9223372036854775808/-1', '-0', '-0.0', '+0', '+0.0'],
  ...['0.00', '0..0', '.', '0.0.0', '0,00', '0,,0', ',', '0,0,0', '0.0/0', '1.0/0.0', '0.0/0.0'],
  ...['--1', '-', '-.', '-,', '99999999999999999999999999', 'NaN', 'Infinity', '-Infinity', 'INF'],
  ...['1#INF', '-1#IND', '1#QNAN', '1#SNAN', '0x0', '0xffffffff', '0xabad1dea', '0b11', '0o7'],
  ...['123456789012345678901234567890123456789', '1,000.00', '1 000.00', "1'000.00", '1,000,000'],
  ...['1.000,00', '1 000,00', '1.000.000,00', '01000', '08', '09', '2.2250738585072011e-308'],
  ...['012-345-678', '5:30', '1e1000', '1e-1000', '１２３', '١٢٣', '٠٫٥', '½', '⅛', '²', '₂', 'Ⅳ'],
];

const punctuation: readonly string[] = [
  ",./;'[]\\-=",
  '<>?:"{}|_+',
  '!@#$%^&*()`~',
  "'",
  '"',
  "''",
  '""',
  `'"'`,
  `"''''"'"`,
  "\"'\"'\"''''\"",
  '`',
  '&',
  ';',
  '|',
  '%',
  '%s%s%s%n%x%d',
  '%%',
  '{0}',
  '{}',
  `$${'{a}'}`,
  '#{a}',
  '<%= 1 %>',
  '{{ 1 }}',
  '~',
  '*',
  '?',
  '#',
  '!',
  '-',
  '--',
  '--help',
  '-rf',
];

/** Control characters of both sets, but those that end a line. */
const controls: readonly string[] = [
  ...[0x01, 0x07, 0x08, 0x0b, 0x0c, 0x0e, 0x1a, 0x1b, 0x7f, 0x80, 0x85, 0x90, 0x9b, 0x9c].map(
    (code) => `a${String.fromCharCode(code)}b`,
  ),
  '\u001b[31mred\u001b[0m',
  '\u001b]0;title\u0007',
  '\u001bP+q544e\u001b\\',
  '\u001b[6n',
  '\u001bc',
  'a\bb',
  'roof\t\t1',
  // The mark of an end of file.
  'a\u001ab',
];

/** Blanks that are none of ASCII, and marks that are not seen. */
const unseen: readonly string[] = [
  ...['\u00a0', '\u1680', '\u180e', '\u2000', '\u2003', '\u2007', '\u2009', '\u200a', '\u202f'],
  ...['\u205f', '\u3000', '\u00ad', '\u034f', '\u061c', '\u115f', '\u17b4', '\u200b', '\u200c'],
  ...['\u200d', '\u200e', '\u2028', '\u2029', '\u2060', '\u2061', '\u2064', '\u206a', '\u3164'],
  ...['\ufe0f', '\ufeff', '\ufff9', '\uffa0', '\ufffc', '\ufffd', '\u{e0001}', '\u{e0020}'],
].map((mark) => `a${mark}b`);

const notCharacters: readonly string[] = [
  'a\ufffeb',
  'a\uffffb',
  'a\u{1fffe}b',
  'a\u{10ffff}b',
  'a\ue000b',
  'a\u{f0000}b',
];

const scripts: readonly string[] = [
  'Ω≈ç√∫˜µ≤≥÷',
  'åß∂ƒ©˙∆˚¬…æ',
  'œ∑´®†¥¨ˆøπ“‘',
  '¡™£¢∞§¶•ªº–≠',
  '¸˛Ç◊ı˜Â¯˘¿',
  'ÅÍÎÏ˝ÓÔÒÚÆ☃',
  'ЁЂЃЄЅІЇЈЉЊЋЌЍЎЏ',
  '٠١٢٣٤٥٦٧٨٩',
  '⁰⁴⁵ ₀₁₂',
  '田中さんにあげて下さい',
  '和製漢語 部落格 사회과학원',
  '찦차를 타고 온 펲시맨',
  '𠜎𠜱𠝹𠱓𠱸𠲖𠳏',
  'Ⱥ Ⱦ ⱥ ⱦ',
  'İıiI ſs ẞß ΐ ŉ ǰ',
  'ﬁ ﬂ ﬃ ﷺ',
  'בראשית ברא',
  'هُنَا الْعَرَبِيَّة',
  'ثم نفس سقطت وبالتحديد',
  '﷽ ﷺ',
  'test\u202dtset',
  '\u2067إ\u2069 b',
  'क्षि 한글 ก็',
  'नमस्ते',
  'Z̮̞̠͙͔ͅḀ̗̞͈̻̗Ḷ͙͎̯̹̞͓G̻O̭̗̮',
  'e\u0301 é',
  'Å Å A\u030a',
  '\u0301a',
  '˙ɐnbᴉlɐ ɐuƃɐɯ',
  'Ｔｈｅ ｑｕｉｃｋ',
  '𝐓𝐡𝐞 𝕋𝕙𝕖 ⒯⒣⒠',
  'ヽ༼ຈل͜ຈ༽ﾉ',
  '( ͡° ͜ʖ ͡°)',
  '(╯°□°)╯︵ ┻━┻',
  '❤️ 💔 💌 🚗',
  '👩‍👩‍👧‍👦 👨🏿‍🔧',
  '🇺🇸🇷🇺🇦🇫',
  '✋🏿 💪🏿 🏴󠁧󠁢󠁥󠁮󠁧󠁿',
  'раураl',
  'ᄀ'.repeat(40),
  'a'.repeat(70_000),
  '\u0300'.repeat(2_000),
];

const injections: readonly string[] = [
  '<script>alert(0)</script>',
  '&lt;script&gt;alert(0)&lt;/script&gt;',
  '<svg><script>0<1>alert(0)</script>',
  '"><script>alert(0)</script>',
  "'><script>alert(0)</script>",
  '</script><script>alert(0)</script>',
  '" onfocus=JaVaSCript:alert(0) autofocus',
  "' onfocus=alert(0) autofocus",
  '<IMG SRC="jav&#x09;ascript:alert(0);">',
  '<img src=x onerror\u000b=alert(0)>',
  '<a href="javas\u0001cript:alert(0)">x</a>',
  '<style>*{x:expression(alert(0))}</style>',
  '<!--',
  '-->',
  '<![CDATA[',
  ']]>',
  '<?xml version="1.0"?><!DOCTYPE a [<!ENTITY b SYSTEM "file:///etc/passwd">]><a>&b;</a>',
  '<iframe src=http://example.org/ <',
  '<plaintext>',
  "1'; DROP TABLE cars-- 1",
  "' OR 1=1 -- 1",
  '%00',
  '%0d%0aX: y',
  'a\r\nb',
  'a\nb',
  '../../../../../../etc/passwd%00',
  '../../../../etc/hosts',
  '..\\..\\windows\\win.ini',
  '/dev/null; touch owned ; echo',
  '`touch owned`',
  '$(touch owned)',
  '@{[system "touch owned"]}',
  'eval("puts 1")',
  'System("ls")',
  '() { 0; }; touch owned;',
  '() { _; } >_[$($())] { touch owned; }',
  '$HOME',
  "$ENV{'HOME'}",
  '%d',
  '%*.*s',
  '%x%x%x%x%n',
  '{% print 1 %}',
  '__import__("os").system("touch owned")',
  "=cmd|' /C calc'!A0",
  '+1+1',
  '@SUM(1+1)',
  '=HYPERLINK("http://example.org","x")',
  '\t=1+1',
  '\r=1+1',
  "'=1+1",
];

/** Names that a file system or a shell takes in its own way. */
const names: readonly string[] = [
  ...['CON', 'PRN', 'AUX', 'NUL', 'COM1', 'LPT1', 'CLOCK$', 'A:', 'ZZ:', 'nul.csv', 'con.txt'],
  ...['.', '..', '...', ' .', '. ', ' leading', 'trailing ', 'a/b', 'a\\b', '.hidden', '~root'],
  ...['a:b', 'a*b', 'a?b', 'a|b', 'C:\\x', '\\\\server\\share', '-o', '--out', '@file', '-'],
];

/** Words that have been told apart badly: harmless, and to be left as they are. */
const harmless: readonly string[] = [
  ...['Scunthorpe General Hospital', 'Penistone', 'Lightwater', 'Jimmy Clitheroe', 'Dick'],
  ...['expression', 'mocha', 'evaluate', 'classic', 'Linda Callahan', 'Craig Cockburn'],
  'If you read this, you have been reading a label.',
];

export const naughtyStrings: readonly string[] = [
  ...new Set([
    ...naughty,
    ...words,
    ...numbers,
    ...punctuation,
    ...controls,
    ...unseen,
    ...notCharacters,
    ...scripts,
    ...injections,
    ...names,
    ...harmless,
    '',
    ' ',
    '\0',
    'a\0b',
  ]),
];
