import { createRootRoute, createRoute, createRouter, Outlet } from '@tanstack/react-router';
import { BookPage } from './book/BookPage.tsx';
import { JobPage } from './desk/JobPage.tsx';
import { Lost } from './desk/Lost.tsx';

const root = createRootRoute({ component: Outlet, notFoundComponent: Lost });

const book = createRoute({
  getParentRoute: () => root,
  path: '/',
  validateSearch: ({ find }: Record<string, unknown>): { find?: boolean } => (find === true ? { find } : {}),
  component: function Book() {
    return <BookPage find={book.useSearch().find === true} />;
  },
});

/** What is selected on a sheet stands in its address, so that it can be sent and comes back with the page. */
function selection({ at }: Record<string, unknown>): { at?: string } {
  return typeof at === 'string' ? { at } : {};
}

const sheets = createRoute({
  getParentRoute: () => root,
  path: '/job/$id',
  component: function Sheets() {
    const { id } = sheets.useParams();
    return <JobPage id={id} sheet={undefined} at={undefined} />;
  },
});

const sheet = createRoute({
  getParentRoute: () => root,
  path: '/job/$id/$sheet',
  validateSearch: selection,
  component: function OneSheet() {
    const { id, sheet: no } = sheet.useParams();
    return <JobPage id={id} sheet={no} at={sheet.useSearch().at} />;
  },
});

export const router = createRouter({ routeTree: root.addChildren([book, sheets, sheet]), scrollRestoration: true });

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}
