import { createRootRoute, createRoute, createRouter, lazyRouteComponent, Outlet } from '@tanstack/react-router';
import { Suspense } from 'react';
import { Lost } from './desk/Lost.tsx';
import { PartMissing } from './desk/PartMissing.tsx';
import { FileDrop } from './file/FileDrop.tsx';
import { sheetNoOf } from './frame/sheetNames.ts';
import { makePart, PartPage } from './partPage.tsx';

// a sheet opened by its address waits for no page but its own; the others are fetched once that stands
const bookPage = makePart(async () => (await import('./book/BookPage.tsx')).BookPage);
const jobPage = makePart(async () => (await import('./desk/deskPages.ts')).JobPage);
const jobDesk = makePart(async () => (await import('./desk/deskPages.ts')).JobDesk);
const historyPage = makePart(async () => (await import('./history/HistoryPage.tsx')).HistoryPage);
const surveyPage = makePart(async () => (await import('./survey/SurveyPage.tsx')).SurveyPage);

const NOTHING = () => {};

/** Fetches what the page of an address is drawn from. Where that fails it is said in words where it is shown. */
export async function fetchFirstPart(path: string): Promise<void> {
  const [, id, page = ''] = /^\/job\/([^/]+)(?:\/([^/]+))?/.exec(path) ?? [];
  await Promise.allSettled((id === undefined ? [bookPage] : [jobPage, jobDesk]).map((part) => part.fetch()));
  if (id === undefined) return;
  const sheet = sheetNoOf(page) ?? '01';
  // an address that cannot be read is told of where the page is drawn
  await import('./desk/deskPages.ts').then((desk) => desk.openEarly(decodeURIComponent(id), sheet)).catch(NOTHING);
}

/** Fetches every page there is, so that one that is open goes on when its server does not. */
export async function fetchAllParts(): Promise<void> {
  await Promise.allSettled([bookPage, jobPage, jobDesk, historyPage, surveyPage].map((part) => part.fetch()));
}

const root = createRootRoute({
  component: function Page() {
    return (
      <>
        <Suspense fallback={null}>
          <Outlet />
        </Suspense>
        <FileDrop />
      </>
    );
  },
  notFoundComponent: Lost,
});

const book = createRoute({
  getParentRoute: () => root,
  path: '/',
  validateSearch: ({ find }: Record<string, unknown>): { find?: boolean } => (find === true ? { find } : {}),
  component: function Book() {
    return <PartPage part={bookPage} props={{ find: book.useSearch().find === true }} />;
  },
});

/** What is selected on a sheet stands in its address, so that it can be sent and comes back with the page. */
function selection({ at }: Record<string, unknown>): { at?: string } {
  return typeof at === 'string' ? { at } : {};
}

function JobParts() {
  return (
    <Suspense fallback={null}>
      <Outlet />
    </Suspense>
  );
}

/** All pages of one job below one opening of it: going from sheet to sheet reads nothing anew. */
const job = createRoute({
  getParentRoute: () => root,
  path: '/job/$id',
  component: function OneJob() {
    return <PartPage part={jobPage} props={{ id: job.useParams().id, children: <JobParts /> }} />;
  },
});

const sheets = createRoute({
  getParentRoute: () => job,
  path: '/',
  component: function Sheets() {
    return <PartPage part={jobDesk} props={{ sheet: undefined, at: undefined }} />;
  },
});

const history = createRoute({
  getParentRoute: () => job,
  path: 'history',
  component: function History() {
    return <PartPage part={historyPage} props={{}} />;
  },
});

const survey = createRoute({
  getParentRoute: () => job,
  path: 'survey',
  component: function Survey() {
    return <PartPage part={surveyPage} props={{ address: undefined }} />;
  },
});

const surveyStep = createRoute({
  getParentRoute: () => job,
  path: 'survey/$step',
  component: function SurveyStep() {
    return <PartPage part={surveyPage} props={{ address: surveyStep.useParams().step }} />;
  },
});

const sheet = createRoute({
  getParentRoute: () => job,
  path: '$sheet',
  validateSearch: selection,
  component: function OneSheet() {
    const no = sheetNoOf(sheet.useParams().sheet);
    const { at } = sheet.useSearch();
    return no === undefined ? <Lost /> : <PartPage part={jobDesk} props={{ sheet: no, at }} />;
  },
});

const specimens = createRoute({
  getParentRoute: () => root,
  path: '/specimens',
  component: lazyRouteComponent(() => import('./specimens/SpecimensPage.tsx'), 'SpecimensPage'),
});

export const router = createRouter({
  routeTree: root.addChildren([book, specimens, job.addChildren([sheets, history, survey, surveyStep, sheet])]),
  scrollRestoration: true,
  defaultErrorComponent: PartMissing,
});

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}
