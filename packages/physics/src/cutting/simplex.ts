/** One variable of the programme: what it costs and where it stands. */
export interface Column {
  readonly cost: number;
  readonly rows: readonly number[];
  readonly values: readonly number[];
}

/** Reduced costs and pivots below this are rounding. */
const SMALL = 1e-9;
/** Pivots after which the inverse is made anew. */
const REBUILD_AFTER = 60;
/** Steps without gain after which the first-index rule takes over, which cannot go round in circles. */
const PATIENCE = 200;

/**
 * Least Σ cost·x with Σ column·x = b, x ≥ 0; columns may be added between solutions.
 *
 * Primal simplex with an explicit inverse: largest reduced cost first, among equal ratios the largest pivot, first
 * index after a long stand. The inverse is m × m, meant for some hundred rows at most.
 *
 * Source: Dantzig 1963; Bland 1977 (first-index rule). From memory.
 */
export class Simplex {
  readonly columns: Column[];
  /** Worth of one unit of each row, from the last solution. */
  readonly prices: Float64Array;
  pivots = 0;
  private readonly b: readonly number[];
  private readonly basis: number[];
  private readonly amounts: Float64Array;
  private readonly inverse: Float64Array;
  private stand = 0;

  /** @param start  Column i stands in row i alone, with a value above 0: the first basis. */
  constructor(b: readonly number[], start: readonly Column[]) {
    const m = b.length;
    this.b = b;
    this.columns = [...start];
    this.basis = start.map((_, i) => i);
    this.prices = new Float64Array(m);
    this.amounts = Float64Array.from(b, (amount, i) => amount / start[i].values[0]);
    this.inverse = new Float64Array(m * m);
    for (let i = 0; i < m; i++) this.inverse[i * m + i] = 1 / start[i].values[0];
    this.price();
  }

  /** Cost of the present solution. */
  get value(): number {
    return this.basis.reduce((sum, column, i) => sum + this.columns[column].cost * this.amounts[i], 0);
  }

  /** Columns in use and how much of each. */
  get uses(): { readonly column: number; readonly amount: number }[] {
    return this.basis.map((column, i) => ({ column, amount: this.amounts[i] })).filter(({ amount }) => amount > SMALL);
  }

  /** Pivots until no column improves, or until `mayPivot` says stop; true if none improves. */
  solve(mayPivot: () => boolean): boolean {
    for (;;) {
      const { column, gain } = this.entering();
      if (column < 0) return true;
      if (!mayPivot()) return false;
      const change = this.changeBy(this.columns[column]);
      const row = this.leaving(change);
      this.pivot(column, row, change);
      const m = this.prices.length;
      for (let j = 0; j < m; j++) this.prices[j] -= gain * this.inverse[row * m + j];
      this.pivots++;
      if (this.pivots % REBUILD_AFTER === 0) this.rebuild();
    }
  }

  private price(): void {
    const { prices, basis, columns, inverse } = this;
    const m = prices.length;
    prices.fill(0);
    for (let i = 0; i < m; i++) {
      const { cost } = columns[basis[i]];
      if (cost === 0) continue;
      for (let j = 0; j < m; j++) prices[j] += cost * inverse[i * m + j];
    }
  }

  /** The column that gains most by a unit, or none. */
  private entering(): { readonly column: number; readonly gain: number } {
    let best = -1;
    let least = -SMALL;
    for (let column = 0; column < this.columns.length; column++) {
      const { cost, rows, values } = this.columns[column];
      let reduced = cost;
      for (let at = 0; at < rows.length; at++) reduced -= this.prices[rows[at]] * values[at];
      if (reduced >= least) continue;
      least = reduced;
      best = column;
      if (this.stand >= PATIENCE) break;
    }
    return { column: best, gain: -least };
  }

  /** What a unit of the column takes from each basic amount. */
  private changeBy({ rows, values }: Column): Float64Array {
    const m = this.prices.length;
    const change = new Float64Array(m);
    for (let i = 0; i < m; i++) {
      for (let at = 0; at < rows.length; at++) change[i] += this.inverse[i * m + rows[at]] * values[at];
    }
    return change;
  }

  private leaving(change: Float64Array): number {
    let best = -1;
    let ratio = Number.POSITIVE_INFINITY;
    for (let i = 0; i < change.length; i++) {
      if (change[i] <= SMALL) continue;
      const own = Math.max(0, this.amounts[i]) / change[i];
      if (own > ratio + SMALL) continue;
      const first = this.stand >= PATIENCE ? this.basis[i] < this.basis[best] : change[i] > change[best];
      if (best >= 0 && own > ratio - SMALL && !first) continue;
      best = i;
      ratio = own;
    }
    if (best < 0) throw new Error('Simplex: the programme has no least value; every cost should be 0 or more');
    return best;
  }

  private pivot(entering: number, row: number, change: Float64Array): void {
    const { inverse, amounts } = this;
    const m = change.length;
    const step = Math.max(0, amounts[row]) / change[row];
    this.stand = step > SMALL ? 0 : this.stand + 1;
    for (let j = 0; j < m; j++) inverse[row * m + j] /= change[row];
    for (let i = 0; i < m; i++) {
      if (i === row || change[i] === 0) continue;
      amounts[i] -= step * change[i];
      for (let j = 0; j < m; j++) inverse[i * m + j] -= change[i] * inverse[row * m + j];
    }
    amounts[row] = step;
    this.basis[row] = entering;
  }

  /** The inverse of the basis anew, by Gauss and Jordan, so that the rounding of many pivots does not add up. */
  private rebuild(): void {
    const m = this.prices.length;
    const matrix = new Float64Array(m * m);
    this.basis.forEach((column, at) => {
      const { rows, values } = this.columns[column];
      rows.forEach((row, k) => {
        matrix[row * m + at] = values[k];
      });
    });
    this.inverse.fill(0);
    for (let i = 0; i < m; i++) this.inverse[i * m + i] = 1;
    for (let at = 0; at < m; at++) eliminate(matrix, this.inverse, m, at);
    for (let i = 0; i < m; i++) {
      let amount = 0;
      for (let j = 0; j < m; j++) amount += this.inverse[i * m + j] * this.b[j];
      this.amounts[i] = amount;
    }
    this.price();
  }
}

/** Makes column `at` of the matrix a unit column, doing the same to its companion. */
function eliminate(matrix: Float64Array, companion: Float64Array, m: number, at: number): void {
  let pivotRow = at;
  for (let i = at + 1; i < m; i++) {
    if (Math.abs(matrix[i * m + at]) > Math.abs(matrix[pivotRow * m + at])) pivotRow = i;
  }
  const pivot = matrix[pivotRow * m + at];
  if (pivot === 0) throw new Error('Simplex: the basis is singular');
  for (const side of [matrix, companion]) {
    for (let j = 0; j < m; j++) {
      const held = side[at * m + j];
      side[at * m + j] = side[pivotRow * m + j] / pivot;
      if (pivotRow !== at) side[pivotRow * m + j] = held;
    }
  }
  for (let i = 0; i < m; i++) {
    const factor = i === at ? 0 : matrix[i * m + at];
    if (factor === 0) continue;
    for (const side of [matrix, companion]) {
      for (let j = 0; j < m; j++) side[i * m + j] -= factor * side[at * m + j];
    }
  }
}
