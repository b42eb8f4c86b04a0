import type { Diagnostic } from '../../src/base/diagnostics.ts';
import { filmModel } from '../../src/formats/models.ts';
import { type IntakeOptions, readGaugeFile } from '../../src/intake/read-gauge-file.ts';

export const panelNames = ['bonnet', 'roof', 'boot', 'door front left'];
export const options: IntakeOptions = {
  plausible: filmModel.measurement,
  isPanel: (label) => panelNames.includes(label.toLowerCase()),
};
export const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

export const read = (text: string, more: Partial<IntakeOptions> = {}) =>
  readGaugeFile({ name: 'r.csv', bytes: utf8(text) }, { ...options, ...more });

/** `line:column+length severity code`, the part of a diagnostic that a test pins down. */
export const brief = ({ at, severity, code }: Diagnostic): string =>
  `${at?.line}:${at?.column}+${at?.length} ${severity} ${code}`;
export const briefs = (text: string, more: Partial<IntakeOptions> = {}): readonly string[] =>
  read(text, more).diagnostics.map(brief);

/** panel, point, repeat and value of each reading. */
export const values = (text: string, more: Partial<IntakeOptions> = {}) =>
  read(text, more).value?.readings.map((r) => [r.panel, r.point, r.repeat, Number(r.thickness)]);
