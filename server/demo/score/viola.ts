/** Viola of the demo piece, in the notation of `notation.ts`. */
export const VIOLA = `
0  rq
1  {p} B3w
2  G3w
3  A3h( C4h)
4  G3w
5  C4w
6  G3w
7  {>} A3h( C4h)
8  {!} B3w
9  {mp} G3w
10 G3h( B3h)
11 {<} C4h( E4h)
12 {!} D4h( A3h)
13 D4w
14 {>} C4w
15 {p} B3w
16 A3w
17 {mp} G3h( B3h)
18 E4w
19 {<} D4h( F#4h)
20 {mf} B3h( A3h)
21 B3h( C4h)
22 {<} C4h( E4h)
23 F#4e' F#4e' F#4e' F#4e' F#4e' F#4e' F#4e' F#4e'
24 {f} Eb4h( {>} A3h)
25 {p} B3e( D4e G4e D4e) B3e( D4e G4e D4e)
26 A3e( D4e F#4e D4e) A3e( D4e F#4e D4e)
27 G3e( B3e E4e B3e) G3e( B3e E4e B3e)
28 F#3e( B3e D4e B3e) F#3e( B3e D4e B3e)
29 G3e( C4e E4e C4e) G3e( C4e E4e C4e)
30 G3e( B3e D4e B3e) G3e( B3e D4e B3e)
31 A3e( C4e E4e C4e) A3e( C4e E4e C4e)
32 {<} A3e( D4e F#4e D4e) A3e( C4e F#4e C4e)
33 {f} D4h( E4h)
34 D4h( B3h)
35 E4h( C4h)
36 B3h( A3h)
37 G3h( C4h)
38 D4w
39 {>} D4w
40 {!} C4w
41 {p} B3h( D4h)
42 D4h( C4h)
43 {<} A3h( E4q D4q)
44 G4h( E4q F#4q)
45 {mf} G4h( A4q G4q)
46 {>} F#4h( A4h)
47 {pp} D4w
48 E4w~
49 {<} E4w~
50 {>} E4w
51 D4w
52 {ppp} C4w
53 {mf} {leggiero} re D4e' D4e' re D4e' D4e'
54 re F#4e' F#4e' re F#4e' F#4e'
55 re E4e' E4e' re E4e' E4e'
56 re D4e' D4e' re D4e' D4e'
57 re D4e' D4e' re D4e' D4e'
58 re E4e' E4e' re E4e' E4e'
59 {<} re F#4e' F#4e' re F#4e' F#4e'
60 {!} D4q. rq.
61 {f} G4q.> A4q.>
62 G4q.> E4q.>
63 G4q.> E4q.>
64 F#4q.> D#4q.>
65 {<} G4q.> E4q.>
66 {ff} E4q.( D#4q.)
67 C4q.( D#4q.)
68 {>} D#4q. {!} rq.
69 {p} G3h.~
70 G3h.
71 {<} C4h.
72 B3h.
73 {f} D4q.( F#4q.)
74 D4q.( E4q.)
75 F#4h.
76 D4h.
77 {ff} B3q. G4q.>
78 E4q. E4q.>
79 F#4q. F#4q.>
80 [B3 G4]q.>n rq.
81 {p} G4h.(
82 {>} F#4h.
83 {pp} D4h.)
84 B4h.^
`;
