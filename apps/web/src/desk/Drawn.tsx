import { Component, type ReactNode } from 'react';
import { Act } from '../parts/Act.tsx';

interface DrawnProps {
  readonly what: string;
  readonly children: ReactNode;
}

interface DrawnState {
  readonly note: string | undefined;
}

/** Holds a fault of one drawing to that drawing: the frame, the job and the other sheets stay. */
export class Drawn extends Component<DrawnProps, DrawnState> {
  override state: DrawnState = { note: undefined };

  static getDerivedStateFromError(error: unknown): DrawnState {
    return { note: error instanceof Error ? `${error.message}\n${error.stack}` : String(error) };
  }

  override render() {
    const { note } = this.state;
    if (note === undefined) return this.props.children;
    return (
      <div role="alert">
        <p>
          <b>This sheet could not be drawn. The job is safe. Copy the note for us.</b>
        </p>
        <Act onPress={() => void navigator.clipboard.writeText(`${this.props.what}: ${note}`)}>Copy the note</Act>
        <p className="quiet small">{note.split('\n')[0]}</p>
      </div>
    );
  }
}
