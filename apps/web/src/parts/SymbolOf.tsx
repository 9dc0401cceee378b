export interface SymbolOfProps {
  /** As a working writes it: `U`, `I_z`. */
  readonly symbol: string;
}

/** The symbol of a quantity, slanting; what follows the underscore stands below the line. */
export function SymbolOf({ symbol }: SymbolOfProps) {
  const [letter, index] = symbol.split('_');
  return (
    <i className="symbol">
      {letter}
      {index !== undefined && <sub>{index}</sub>}
    </i>
  );
}
