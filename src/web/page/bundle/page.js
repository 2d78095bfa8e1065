import{N as o}from"./chunk-LWCAZ25T.js";var s=150,t=new Promise(e=>setTimeout(e,s));Promise.race([o,t]).then(()=>import("./main-NOTKUH3B.js"));
