<<<<<<< HEAD
import{R as o}from"./chunk-6KEALQGP.js";var s=150,t=new Promise(e=>setTimeout(e,s));Promise.race([o,t]).then(()=>import("./main-4SQ5QQUU.js"));
=======
import{R as o}from"./chunk-6KEALQGP.js";var s=150,t=new Promise(e=>setTimeout(e,s));Promise.race([o,t]).then(()=>import("./main-CKC7Y7UQ.js"));
>>>>>>> 29c4677 (Let an order take pieces that are made already, each piece once, and plan the rest)
