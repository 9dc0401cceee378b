export interface SymbolOfProps {
  /** As a working writes it: `U`, `I_z`, `ΔU₁`. */
  readonly symbol: string;
}

const BELOW = '₀₁₂₃₄₅₆₇₈₉';

/** The symbol of a quantity, slanting; what follows the underscore, and figures below the line, stand below it upright. */
export function SymbolOf({ symbol }: SymbolOfProps) {
  const [, letter = symbol, index = ''] = /^([^_₀-₉]+)_?(.*)$/.exec(symbol) ?? [];
  return (
    <i className="symbol">
      {letter}
      {index !== '' && <sub>{index.replace(/[₀-₉]/g, (digit) => String(BELOW.indexOf(digit)))}</sub>}
    </i>
  );
}
