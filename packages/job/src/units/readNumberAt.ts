/** A number found in a text, or why there is none to be taken. */
export type NumberAt =
  | {
      readonly kind: 'number';
      readonly value: number;
      /** Index behind it. */
      readonly end: number;
      /** Written as figures alone, without point or fraction. */
      readonly whole: boolean;
    }
  /** `1,200`: two numbers it could be. */
  | { readonly kind: 'two'; readonly text: string; readonly could: readonly [string, string] }
  | { readonly kind: 'none'; readonly text: string };

/** `3/4`, `5 3/4`, `5-3/4`. */
const FRACTION = /(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)/y;
/** Figures with points, commas and spaces between them, and a power of ten behind: judged afterwards. */
const FIGURES = /(?:\d+(?:[ .,]\d+)*[.,]?|[.,]\d+)(?:[eE][+-]?\d+)?/y;

/**
 * The number that begins at an index of a text of plain signs.
 *
 * A point is a decimal point, unless several of them part the figures by threes or a comma follows. A comma is a
 * decimal comma unless it parts by threes; one comma with three figures behind it (`1,200`) could be either, and is
 * given back as both. Spaces part by threes only. No sign stands before it.
 */
export function readNumberAt(text: string, from: number): NumberAt {
  const fraction = matchAt(FRACTION, text, from);
  if (fraction !== undefined) {
    const [all, before = '0', above = '', below = ''] = fraction;
    const value = Number(before) + Number(above) / Number(below);
    if (!Number.isFinite(value)) return { kind: 'none', text: all };
    return { kind: 'number', value, end: from + all.length, whole: false };
  }
  const found = matchAt(FIGURES, text, from)?.[0];
  if (found === undefined) return { kind: 'none', text: text.slice(from) };
  const [mantissa = '', power] = found.split(/[eE]/);
  const could = twoReadings(mantissa);
  if (could !== undefined) return { kind: 'two', text: found, could };
  const figures = pointed(mantissa);
  if (figures === undefined) return { kind: 'none', text: found };
  const value = Number(power === undefined ? figures : `${figures}e${power}`);
  const vanished = value === 0 && /[1-9]/.test(figures);
  if (!Number.isFinite(value) || vanished) return { kind: 'none', text: found };
  return { kind: 'number', value, end: from + found.length, whole: /^\d+$/.test(figures) && power === undefined };
}

function matchAt(pattern: RegExp, text: string, from: number): RegExpExecArray | undefined {
  pattern.lastIndex = from;
  return pattern.exec(text) ?? undefined;
}

/** `1,200` is 1200 to one reader and 1.2 to another; `0,200` and `1234,200` part nothing by threes. */
function twoReadings(figures: string): readonly [string, string] | undefined {
  if (!/^[1-9]\d{0,2},\d{3}$/.test(figures)) return undefined;
  return [figures.replace(',', ''), String(Number(figures.replace(',', '.')))];
}

/** Figures with a decimal point and nothing between thousands; undefined where marks stand as in no number. */
function pointed(figures: string): string | undefined {
  const spaced = /^\d{1,3}( \d{3})+([.,]\d*)?$/.test(figures);
  if (figures.includes(' ') && !spaced) return undefined;
  const close = figures.replaceAll(' ', '');
  if (/^\d*[.,]?\d*$/.test(close)) return close.replace(',', '.');
  if (spaced) return undefined;
  if (/^\d{1,3}(,\d{3})+(\.\d*)?$/.test(close)) return close.replaceAll(',', '');
  if (/^\d{1,3}(\.\d{3})+(,\d*)?$/.test(close)) return close.replaceAll('.', '').replace(',', '.');
  return undefined;
}
