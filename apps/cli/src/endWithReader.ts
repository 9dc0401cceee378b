import process from 'node:process';

/**
 * Ends quietly when whoever reads the output has seen enough, as `eaveline plan JOB --json | head` does.
 * Any other trouble with the stream is thrown.
 */
export function endWithReader(stream: NodeJS.EventEmitter, end: () => void = () => process.exit()): void {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
    end();
  });
}
