import{N as o}from"./chunk-WP4AYE63.js";var s=150,t=new Promise(e=>setTimeout(e,s));Promise.race([o,t]).then(()=>import("./main-OCWXEWHF.js"));
