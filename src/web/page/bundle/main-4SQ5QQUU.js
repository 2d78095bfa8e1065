import{A as lf,B as uf,C as tn,D as df,E as cf,F as pf,G as st,H as wt,I as mf,J as ff,K as ae,L as wn,M as cs,N as en,O as ku,P as hf,Q as gf,S as _f,T as $f,U as bf,a as zm,b as Jm,c as C,d as y,e as Km,f as Ro,g as Xe,h as Er,i as Wt,j as ui,k as Vm,l as Qm,m as Gm,n as Ym,o as Zm,p as ds,q as Xm,r as tf,s as Nr,t as ef,u as nf,v as of,w as sf,x as rf,y as jn,z as af}from"./chunk-6KEALQGP.js";var jr=globalThis,qr=jr.ShadowRoot&&(jr.ShadyCSS===void 0||jr.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,yf=Symbol(),wf=new WeakMap,Hr=class{constructor(e,n,o){if(this._$cssResult$=!0,o!==yf)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=e,this.t=n}get styleSheet(){let e=this.o,n=this.t;if(qr&&e===void 0){let o=n!==void 0&&n.length===1;o&&(e=wf.get(n)),e===void 0&&((this.o=e=new CSSStyleSheet).replaceSync(this.cssText),o&&wf.set(n,e))}return e}toString(){return this.cssText}},vf=t=>new Hr(typeof t=="string"?t:t+"",void 0,yf);var kf=(t,e)=>{if(qr)t.adoptedStyleSheets=e.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of e){let o=document.createElement("style"),i=jr.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,t.appendChild(o)}},xu=qr?t=>t:t=>t instanceof CSSStyleSheet?(e=>{let n="";for(let o of e.cssRules)n+=o.cssText;return vf(n)})(t):t;var{is:Ak,defineProperty:Dk,getOwnPropertyDescriptor:Pk,getOwnPropertyNames:Ok,getOwnPropertySymbols:Mk,getPrototypeOf:Fk}=Object,Ur=globalThis,xf=Ur.trustedTypes,Bk=xf?xf.emptyScript:"",Ck=Ur.reactiveElementPolyfillSupport,ps=(t,e)=>t,Tu={toAttribute(t,e){switch(e){case Boolean:t=t?Bk:null;break;case Object:case Array:t=t==null?t:JSON.stringify(t)}return t},fromAttribute(t,e){let n=t;switch(e){case Boolean:n=t!==null;break;case Number:n=t===null?null:Number(t);break;case Object:case Array:try{n=JSON.parse(t)}catch{n=null}}return n}},Rf=(t,e)=>!Ak(t,e),Tf={attribute:!0,type:String,converter:Tu,reflect:!1,useDefault:!1,hasChanged:Rf};Symbol.metadata??=Symbol("metadata"),Ur.litPropertyMetadata??=new WeakMap;var yn=class extends HTMLElement{static addInitializer(e){this._$Ei(),(this.l??=[]).push(e)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(e,n=Tf){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(e)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(e,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(e,o,n);i!==void 0&&Dk(this.prototype,e,i)}}static getPropertyDescriptor(e,n,o){let{get:i,set:s}=Pk(this.prototype,e)??{get(){return this[n]},set(l){this[n]=l}};return{get:i,set(l){let d=i?.call(this);s?.call(this,l),this.requestUpdate(e,d,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(e){return this.elementProperties.get(e)??Tf}static _$Ei(){if(this.hasOwnProperty(ps("elementProperties")))return;let e=Fk(this);e.finalize(),e.l!==void 0&&(this.l=[...e.l]),this.elementProperties=new Map(e.elementProperties)}static finalize(){if(this.hasOwnProperty(ps("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(ps("properties"))){let n=this.properties,o=[...Ok(n),...Mk(n)];for(let i of o)this.createProperty(i,n[i])}let e=this[Symbol.metadata];if(e!==null){let n=litPropertyMetadata.get(e);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(e){let n=[];if(Array.isArray(e)){let o=new Set(e.flat(1/0).reverse());for(let i of o)n.unshift(xu(i))}else e!==void 0&&n.push(xu(e));return n}static _$Eu(e,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof e=="string"?e.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(e=>this.enableUpdating=e),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(e=>e(this))}addController(e){(this._$EO??=new Set).add(e),this.renderRoot!==void 0&&this.isConnected&&e.hostConnected?.()}removeController(e){this._$EO?.delete(e)}_$E_(){let e=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(e.set(o,this[o]),delete this[o]);e.size>0&&(this._$Ep=e)}createRenderRoot(){let e=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return kf(e,this.constructor.elementStyles),e}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(e=>e.hostConnected?.())}enableUpdating(e){}disconnectedCallback(){this._$EO?.forEach(e=>e.hostDisconnected?.())}attributeChangedCallback(e,n,o){this._$AK(e,o)}_$ET(e,n){let o=this.constructor.elementProperties.get(e),i=this.constructor._$Eu(e,o);if(i!==void 0&&o.reflect===!0){let s=(o.converter?.toAttribute!==void 0?o.converter:Tu).toAttribute(n,o.type);this._$Em=e,s==null?this.removeAttribute(i):this.setAttribute(i,s),this._$Em=null}}_$AK(e,n){let o=this.constructor,i=o._$Eh.get(e);if(i!==void 0&&this._$Em!==i){let s=o.getPropertyOptions(i),l=typeof s.converter=="function"?{fromAttribute:s.converter}:s.converter?.fromAttribute!==void 0?s.converter:Tu;this._$Em=i;let d=l.fromAttribute(n,s.type);this[i]=d??this._$Ej?.get(i)??d,this._$Em=null}}requestUpdate(e,n,o,i=!1,s){if(e!==void 0){let l=this.constructor;if(i===!1&&(s=this[e]),o??=l.getPropertyOptions(e),!((o.hasChanged??Rf)(s,n)||o.useDefault&&o.reflect&&s===this._$Ej?.get(e)&&!this.hasAttribute(l._$Eu(e,o))))return;this.C(e,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(e,n,{useDefault:o,reflect:i,wrapped:s},l){o&&!(this._$Ej??=new Map).has(e)&&(this._$Ej.set(e,l??n??this[e]),s!==!0||l!==void 0)||(this._$AL.has(e)||(this.hasUpdated||o||(n=void 0),this._$AL.set(e,n)),i===!0&&this._$Em!==e&&(this._$Eq??=new Set).add(e))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let e=this.scheduleUpdate();return e!=null&&await e,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,s]of this._$Ep)this[i]=s;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,s]of o){let{wrapped:l}=s,d=this[i];l!==!0||this._$AL.has(i)||d===void 0||this.C(i,void 0,s,d)}}let e=!1,n=this._$AL;try{e=this.shouldUpdate(n),e?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw e=!1,this._$EM(),o}e&&this._$AE(n)}willUpdate(e){}_$AE(e){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(e)),this.updated(e)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(e){return!0}update(e){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(e){}firstUpdated(e){}};yn.elementStyles=[],yn.shadowRootOptions={mode:"open"},yn[ps("elementProperties")]=new Map,yn[ps("finalized")]=new Map,Ck?.({ReactiveElement:yn}),(Ur.reactiveElementVersions??=[]).push("2.1.2");var Su=globalThis,Sf=t=>t,zr=Su.trustedTypes,Af=zr?zr.createPolicy("lit-html",{createHTML:t=>t}):void 0,Au="$lit$",vn=`lit$${Math.random().toFixed(9).slice(2)}$`,Du="?"+vn,Lk=`<${Du}>`,Do=document,fs=()=>Do.createComment(""),hs=t=>t===null||typeof t!="object"&&typeof t!="function",Pu=Array.isArray,Bf=t=>Pu(t)||typeof t?.[Symbol.iterator]=="function",Ru=`[ 	
\f\r]`,ms=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Df=/-->/g,Pf=/>/g,So=RegExp(`>|${Ru}(?:([^\\s"'>=/]+)(${Ru}*=${Ru}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Of=/'/g,Mf=/"/g,Cf=/^(?:script|style|textarea|title)$/i,Ou=t=>(e,...n)=>({_$litType$:t,strings:e,values:n}),r=Ou(1),S=Ou(2),xB=Ou(3),Et=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),Ff=new WeakMap,Ao=Do.createTreeWalker(Do,129);function Lf(t,e){if(!Pu(t)||!t.hasOwnProperty("raw"))throw Error("invalid template strings array");return Af!==void 0?Af.createHTML(e):e}var If=(t,e)=>{let n=t.length-1,o=[],i,s=e===2?"<svg>":e===3?"<math>":"",l=ms;for(let d=0;d<n;d++){let c=t[d],p,m,_=-1,b=0;for(;b<c.length&&(l.lastIndex=b,m=l.exec(c),m!==null);)b=l.lastIndex,l===ms?m[1]==="!--"?l=Df:m[1]!==void 0?l=Pf:m[2]!==void 0?(Cf.test(m[2])&&(i=RegExp("</"+m[2],"g")),l=So):m[3]!==void 0&&(l=So):l===So?m[0]===">"?(l=i??ms,_=-1):m[1]===void 0?_=-2:(_=l.lastIndex-m[2].length,p=m[1],l=m[3]===void 0?So:m[3]==='"'?Mf:Of):l===Mf||l===Of?l=So:l===Df||l===Pf?l=ms:(l=So,i=void 0);let w=l===So&&t[d+1].startsWith("/>")?" ":"";s+=l===ms?c+Lk:_>=0?(o.push(p),c.slice(0,_)+Au+c.slice(_)+vn+w):c+vn+(_===-2?d:w)}return[Lf(t,s+(t[n]||"<?>")+(e===2?"</svg>":e===3?"</math>":"")),o]},gs=class t{constructor({strings:e,_$litType$:n},o){let i;this.parts=[];let s=0,l=0,d=e.length-1,c=this.parts,[p,m]=If(e,n);if(this.el=t.createElement(p,o),Ao.currentNode=this.el.content,n===2||n===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(i=Ao.nextNode())!==null&&c.length<d;){if(i.nodeType===1){if(i.hasAttributes())for(let _ of i.getAttributeNames())if(_.endsWith(Au)){let b=m[l++],w=i.getAttribute(_).split(vn),x=/([.?@])?(.*)/.exec(b);c.push({type:1,index:s,name:x[2],strings:w,ctor:x[1]==="."?Kr:x[1]==="?"?Vr:x[1]==="@"?Qr:Oo}),i.removeAttribute(_)}else _.startsWith(vn)&&(c.push({type:6,index:s}),i.removeAttribute(_));if(Cf.test(i.tagName)){let _=i.textContent.split(vn),b=_.length-1;if(b>0){i.textContent=zr?zr.emptyScript:"";for(let w=0;w<b;w++)i.append(_[w],fs()),Ao.nextNode(),c.push({type:2,index:++s});i.append(_[b],fs())}}}else if(i.nodeType===8)if(i.data===Du)c.push({type:2,index:s});else{let _=-1;for(;(_=i.data.indexOf(vn,_+1))!==-1;)c.push({type:7,index:s}),_+=vn.length-1}s++}}static createElement(e,n){let o=Do.createElement("template");return o.innerHTML=e,o}};function Po(t,e,n=t,o){if(e===Et)return e;let i=o!==void 0?n._$Co?.[o]:n._$Cl,s=hs(e)?void 0:e._$litDirective$;return i?.constructor!==s&&(i?._$AO?.(!1),s===void 0?i=void 0:(i=new s(t),i._$AT(t,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(e=Po(t,i._$AS(t,e.values),i,o)),e}var Jr=class{constructor(e,n){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:n},parts:o}=this._$AD,i=(e?.creationScope??Do).importNode(n,!0);Ao.currentNode=i;let s=Ao.nextNode(),l=0,d=0,c=o[0];for(;c!==void 0;){if(l===c.index){let p;c.type===2?p=new di(s,s.nextSibling,this,e):c.type===1?p=new c.ctor(s,c.name,c.strings,this,e):c.type===6&&(p=new Gr(s,this,e)),this._$AV.push(p),c=o[++d]}l!==c?.index&&(s=Ao.nextNode(),l++)}return Ao.currentNode=Do,i}p(e){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(e,o,n),n+=o.strings.length-2):o._$AI(e[n])),n++}},di=class t{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=e,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let e=this._$AA.parentNode,n=this._$AM;return n!==void 0&&e?.nodeType===11&&(e=n.parentNode),e}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(e,n=this){e=Po(this,e,n),hs(e)?e===u||e==null||e===""?(this._$AH!==u&&this._$AR(),this._$AH=u):e!==this._$AH&&e!==Et&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==void 0?this.T(e):Bf(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this._$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==u&&hs(this._$AH)?this._$AA.nextSibling.data=e:this.T(Do.createTextNode(e)),this._$AH=e}$(e){let{values:n,_$litType$:o}=e,i=typeof o=="number"?this._$AC(e):(o.el===void 0&&(o.el=gs.createElement(Lf(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let s=new Jr(i,this),l=s.u(this.options);s.p(n),this.T(l),this._$AH=s}}_$AC(e){let n=Ff.get(e.strings);return n===void 0&&Ff.set(e.strings,n=new gs(e)),n}k(e){Pu(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let s of e)i===n.length?n.push(o=new t(this.O(fs()),this.O(fs()),this,this.options)):o=n[i],o._$AI(s),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(e=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);e!==this._$AB;){let o=Sf(e).nextSibling;Sf(e).remove(),e=o}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},Oo=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,n,o,i,s){this.type=1,this._$AH=u,this._$AN=void 0,this.element=e,this.name=n,this._$AM=i,this.options=s,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(e,n=this,o,i){let s=this.strings,l=!1;if(s===void 0)e=Po(this,e,n,0),l=!hs(e)||e!==this._$AH&&e!==Et,l&&(this._$AH=e);else{let d=e,c,p;for(e=s[0],c=0;c<s.length-1;c++)p=Po(this,d[o+c],n,c),p===Et&&(p=this._$AH[c]),l||=!hs(p)||p!==this._$AH[c],p===u?e=u:e!==u&&(e+=(p??"")+s[c+1]),this._$AH[c]=p}l&&!i&&this.j(e)}j(e){e===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,e??"")}},Kr=class extends Oo{constructor(){super(...arguments),this.type=3}j(e){this.element[this.name]=e===u?void 0:e}},Vr=class extends Oo{constructor(){super(...arguments),this.type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==u)}},Qr=class extends Oo{constructor(e,n,o,i,s){super(e,n,o,i,s),this.type=5}_$AI(e,n=this){if((e=Po(this,e,n,0)??u)===Et)return;let o=this._$AH,i=e===u&&o!==u||e.capture!==o.capture||e.once!==o.once||e.passive!==o.passive,s=e!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),s&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},Gr=class{constructor(e,n,o){this.element=e,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(e){Po(this,e)}},Wf={M:Au,P:vn,A:Du,C:1,L:If,R:Jr,D:Bf,V:Po,I:di,H:Oo,N:Vr,U:Qr,B:Kr,F:Gr},Ik=Su.litHtmlPolyfillSupport;Ik?.(gs,di),(Su.litHtmlVersions??=[]).push("3.3.3");var we=(t,e,n)=>{let o=n?.renderBefore??e,i=o._$litPart$;if(i===void 0){let s=n?.renderBefore??null;o._$litPart$=i=new di(e.insertBefore(fs(),s),s,void 0,n??{})}return i._$AI(t),i};var Mu=globalThis,ci=class extends yn{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let e=super.createRenderRoot();return this.renderOptions.renderBefore??=e.firstChild,e}update(e){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(e),this._$Do=we(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Et}};ci._$litElement$=!0,ci.finalized=!0,Mu.litElementHydrateSupport?.({LitElement:ci});var Wk=Mu.litElementPolyfillSupport;Wk?.({LitElement:ci});(Mu.litElementVersions??=[]).push("4.2.2");var Nf=()=>{},Fu=!1,Yr=!1,Cu=!1;function jf(t){Nf=t}function G(){Fu||(Fu=!0,queueMicrotask(()=>{Fu=!1,Yr?Cu=!0:Hf()}))}function Hf(){Cu=!1,Nf()}var Ek=1500,Bu=0;function Ef(){clearTimeout(Bu),Yr=!1,Cu&&Hf()}function qf(){let t=({target:e})=>{!(e instanceof Element)||e.closest("[role=slider], select, canvas")||(Yr=!0,clearTimeout(Bu),Bu=window.setTimeout(Ef,Ek))};addEventListener("pointerdown",t,!0);for(let e of["pointerup","pointercancel"])addEventListener(e,()=>setTimeout(Ef),!0);addEventListener("click",()=>Yr=!1,!0)}function Uf(t){return t.split("/").slice(1).map(e=>e.replaceAll("~1","/").replaceAll("~0","~"))}var N=t=>t.replaceAll("~","~0").replaceAll("/","~1");function $(t,e){let n=t;for(let o of Uf(e)){if(n===null||typeof n!="object")return;n=n[o]}return n}function M(t,e,n){return Lu(t,Uf(e),n)}function Lu(t,e,n){let[o,...i]=e;if(o===void 0)return n;if(Array.isArray(t)){let d=[...t],c=Lu(d[Number(o)],i,n);return c===void 0?d.splice(Number(o),1):d[Number(o)]=c,d}let s={...t??{}},l=Lu(s[o],i,n);return l===void 0?delete s[o]:s[o]=l,s}var zf=t=>Ro("GET",`/api/bench?run=${encodeURIComponent(t)}`),Jf=t=>Xe("/api/bench/tick",t),Kf=t=>Xe("/api/bench/weigh_cup",t),Vf=(t,e)=>Xe("/api/bench/anew",{run:t,batch:e}),Qf=(t,e)=>Xe("/api/bench/finish",{run:t,batch:e});var at=(t,e)=>({name:t,label:e,unit:"mm"}),Hn=at("height","Floor to brim"),Zr={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},Iu={block:{words:"Box, loaf or slab",measures:[at("length","Longer side at the brim"),at("width","Shorter side"),Hn,Zr,{...at("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[at("floor_diameter","Across the floor"),at("brim_diameter","Across the brim"),Hn]},fluted_cup:{words:"Fluted cup",measures:[at("floor_diameter","Across the floor"),at("brim_diameter","Across the brim"),Hn,{name:"flutes",label:"Flutes",unit:"",count:!0},at("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},at("across_flats","Across the flats"),Hn,Zr]},dome:{words:"Bowl",measures:[at("diameter","Across the brim"),Hn]},half_ball:{words:"Half ball",measures:[at("diameter","Across the brim")]},ball:{words:"Ball",measures:[at("diameter","Across")]},half_ring:{words:"Half ring",measures:[at("centre_diameter","Ring, middle to middle of the tube"),at("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[at("outer_floor_diameter","Cup, across the floor"),at("outer_brim_diameter","Cup, across the brim"),at("post_floor_diameter","Post, at its foot"),at("post_brim_diameter","Post, at its top"),Hn]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[at("height","Height"),at("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[Hn,Zr],points:{columns:[at("x","From the left"),at("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[at("side","Straight edge, tip to round"),Hn,Zr]}},Gf=Object.fromEntries(Object.entries(Iu).map(([t,{words:e}])=>[t,e])),pi=t=>Iu[t]?.measures??[],qn=t=>Iu[t]?.points;var Wu=(t,e)=>String($(t,e)??"").trim(),_s=t=>Wu(t,"/shape/kind"),Be=(t,e)=>$(t,`/${e}`)!==void 0,Eu=t=>["body","skin"].includes(Wu(t,"/mesh/role"));function le(t,e){let n=$(t,e);return Array.isArray(n)?n:[]}function Yf(t,e){return(qn(_s(t))?.columns??[]).map(({name:o})=>String($(e,`/${o}`)??"").trim())}function $s(t){return le(t,"/shape/points").flatMap((e,n)=>Yf(t,e).every(Boolean)?[n]:[])}function Xr(t){let e=n=>n.some(Boolean)&&!n.every(Boolean);return le(t,"/shape/points").flatMap((n,o)=>e(Yf(t,n))?[o]:[])}var Nu=t=>le(t,"/water/weighings").flatMap((e,n)=>String(e).trim()?[n]:[]);function Zf(t){let e=t,n=(o,i)=>{if(!Array.isArray($(e,o)))return;let s=i.map(l=>$(t,`${o}/${l}`));e=M(e,o,s)};return qn(_s(t))&&n("/shape/points",$s(t)),n("/water/weighings",Nu(t)),e}function ta(t,e){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(e)??[];if(!n)return e;let s=n==="/shape/points"?$s(t):Nu(t);return`${n}/${s[Number(o)]??o}${i}`}function bs(t){let e=[],n=i=>Wu(t,i)!=="",o=(i,s)=>{i||e.push(s)};if(Be(t,"shape")){let i=_s(t);o(i!=="","the shape");for(let{name:l,label:d,optional:c}of pi(i))o(c||n(`/shape/${l}`),d.toLowerCase());let s=qn(i);s&&o($s(t).length>=s.least,`${s.least} points at least`)}if(Be(t,"water")){o(n("/water/temperature"),"the water's temperature"),o($(t,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o($(t,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(Nu(t).length>0,"a weighing of water")}return!Eu(t)&&!Be(t,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),e}var Xt=t=>t.slice(0,t.lastIndexOf("/")+1),ue=t=>t.slice(t.lastIndexOf("/")+1),kn=(t,e)=>{let n=Xt(t);return n?Nk(n+e):e};function Nk(t){let e=[];for(let n of t.split("/"))n===".."?e.pop():n!=="."&&e.push(n);return e.join("/")}function Ce(t,e){return(t.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+e}function mi(t,e){let[,n,o]=/^(.*?)((?:\.(?:run|order|formula|fats|tips))?\.\w+)$/.exec(t)??["",t,""];for(let i=1;;++i){let s=i===1?t:`${n}_${i}${o}`;if(!e.some(l=>l.file===s))return s}}var jk=["mould","formula","run","file","own_fats","own_tips"];function ju(t,e=""){return t===null||typeof t!="object"?[]:Object.entries(t).flatMap(([n,o])=>{let i=`${e}/${n}`;return typeof o!="string"?ju(o,i):jk.includes(n)?[i]:[]})}function Hu(t,e){let[n,o]=[t,e];for(let i of["/$schema","/id",...ju(t)])[n,o]=[M(n,i,void 0),M(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function qu(t,e){let n=["/id",...ju(t)].filter(o=>$(t,o)!==$(e,o));return o=>n.reduce((i,s)=>$(i,s)===$(t,s)?M(i,s,$(e,s)):i,o)}var Mo={name:"run",list:"runs",called:"name",has_id:!0,new_name:({shipped:t,file:e,now:n})=>t?ue(e):Ce(String(n.name),".run.json"),written:t=>t,is_begun:()=>!0},Fo={name:"order",list:"orders",called:"for",has_id:!0,new_name:({now:t})=>Ce(String(t.for??"order"),".order.json"),written:t=>t,is_begun:()=>!0},Bo={name:"formula",list:"formulas",called:"name",has_id:!1,new_name:({shipped:t,file:e,now:n})=>t?ue(e):Ce(String(n.name),".formula.json"),written:t=>t,is_begun:()=>!0},Uu=(t,e,n)=>({name:t,list:e,called:n,has_id:!1,new_name:({file:o})=>ue(o),written:o=>o,is_begun:()=>!0}),ws=Uu("studio","studios","name"),nn=Uu("fats","fats"),Un=Uu("tips","tips","title"),te={name:"mould",list:"moulds",called:"name",has_id:!1,new_name:({now:t})=>Ce(String(t.name),".json"),written:t=>({...Zf(t),name:String(t.name??"").trim()}),is_begun:t=>Be(t,"shape")||Be(t,"mesh")};var Xf={},th={kind:Mo,id:"",file:"",version:null,shipped:!1,now:Xf,saved:Xf,unanswered:[]},Nt={view:"reading",came_from:"set-up",removed:[],formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:th,formulas:{},beside:{},past:[],future:[],quote_wish:{figure:""},is_old:!1,changed_beside:[],dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},record:{run:"",batches:[],acts:[]},stock:{forms:[]},new_formula:{name:"",copied:""},new_order:"",printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(Uk()),folded:new Set,units:Hk(),announcement:""},a=Nt;function Hk(){let t=localStorage.getItem("units");return t==="metric"||t==="us"?t:"both"}var zu=t=>`numbers ${String(t.now.id??t.file)}`,qk=t=>({numbers:localStorage.getItem(zu(t))??void 0,figure:""});function ys(t){f({quote_wish:{...Nt.quote_wish,...t}});let{numbers:e}=Nt.quote_wish;e?.trim()?localStorage.setItem(zu(Nt.run),e):localStorage.removeItem(zu(Nt.run))}var eh="set-up ";function Uk(){try{let t=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(t)?t.filter(e=>typeof e=="string"):[]}catch{return[]}}function zk(){let t=[...Nt.open].filter(e=>e.startsWith(eh));localStorage.setItem("parts",JSON.stringify(t))}function f(t){Object.assign(Nt,t),G()}var F=t=>f({announcement:t});function v(t,e){Object.assign(t,e),G()}function xn(t,e){let{[t]:n,...o}=Nt.formulas;f({formulas:e?{...o,[t]:e}:o})}function Bt(t,e){let n=new Set(Nt[t]);n.delete(e)||n.add(e),f({[t]:n}),e.startsWith(eh)&&zk()}function fi(t=th){f({run:t,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:[],taken_in:void 0,fault:void 0,plan:void 0,quote_wish:qk(t),quoted:void 0,run_days:void 0,complaint:void 0,finding:void 0,typed:void 0,measured:void 0})}function lt(t){Nt.open.has(t)||f({open:new Set(Nt.open).add(t)})}function Co({list:t,called:e},n,o={}){if(!Nt.files)return;let i=Nt.files[t].findIndex(d=>d.file===n),s={...i<0?{}:Nt.files[t][i],file:n,name:String((e&&o[e])??""),note:String(o.note??""),shipped:!1},l=Nt.files[t].filter(d=>d.file!==n);l.splice(i<0?l.length:i,0,s),f({files:{...Nt.files,[t]:l}})}var Jk=1e4,Ju=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",Ju);var ea=[],hi=()=>`bench ${a.files?.folder??""}`;function de(){try{return[...JSON.parse(localStorage.getItem(hi())??"[]"),...ea]}catch{return ea}}function Ku(t){try{t.length?localStorage.setItem(hi(),JSON.stringify(t)):localStorage.removeItem(hi()),ea=[]}catch{ea=t}}var Kk=(t,e)=>t.run===e.run&&t.batch===e.batch&&t.key===e.key;function nh(t){let e={...t,id:crypto.randomUUID(),tab:Ju,at:Date.now()};Ku([...de().filter(n=>!Kk(n,e)),e])}var na=t=>Ku(de().filter(e=>!t(e))),oh=(t,e)=>Ku(de().map(n=>n.run===t?{...n,run:e}:n)),Vu=()=>de().find(t=>t.tab===Ju||Date.now()-t.at>Jk);var mt=["pour","pipe","apart"],yt=["studio","own_fats","own_tips"],oa=t=>yt.includes(t);var Qu=t=>[...new Set(t.flatMap(e=>a.formulas[e]??[]))],Gu=()=>yt.flatMap(t=>a.beside[t]??[]),ih=t=>t.filter(e=>e.theirs),Tn=t=>ih([...Qu(t==="apart"?["apart"]:["pour","pipe"]),...Gu()])[0],ia=()=>[a.run,...Qu(mt),...Gu()].filter(t=>t.is_taken&&!t.theirs),sa=()=>ih([a.run,...Qu(mt),...Gu()]);var vs=()=>a.formulas.apart?"apart":"run",sh=t=>f({dangers:{...a.dangers,[vs()]:t}});function Yu(t){let e=t.cautions.filter(n=>n.severity==="danger");sh(e.map(({text:n,topic:o,batter:i,batch_pieces:s})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:s})))}function rh(t){t.lye_heavy&&sh([{text:C(t),is_of_heat:!1}])}var ah={};function Le(t,e){(ah[t]??=[]).push(e)}function Tt(t,e){for(let n of ah[t]??[])n(e)}var ks=new Map,Ie=t=>{ks.set(t,void 0)},zn=(t,e)=>{ks.set(t,e)};function lh(t,e){if(!ks.has(t))return!1;let n=ks.get(t);return n===void 0&&ks.set(t,e),n===void 0||n===e}async function ye({kind:t,name:e,text:n,from:o,goes_on:i,about_to:s,is_own:l}){for(;;){let{runs:d=[],orders:c=[],formulas:p=[],moulds:m=[],studios:_=[],fats:b=[],tips:w=[]}=a.files??{},x=mi(e,[...d,...c,...p,...m,..._,...b,...w]);s?.(x);let Q=await Vk({file:x,version:null,text:n,from:o,goes_on:i});if(Co(t,x,wt(Q.there.text)??{}),Q.is_new||l?.(Q.there))return Q.there}}async function Vk(t){try{Ie(t.file);let e=await ui(t);return zn(e.file,e.version),{is_new:!0,there:e}}catch(e){if(!(e instanceof y)||e.status!==409)throw e;return zn(t.file,null),{is_new:!1,there:e.answer}}}var ra=t=>`unsaved ${t.name} ${a.files?.folder??""} `;function Lo({kind:t,id:e,file:n,version:o,shipped:i,now:s},l){if(t.is_begun(s))try{let d={id:e,file:n,version:o,shipped:i,text:st(s),copy:l};localStorage.setItem(ra(t)+e,JSON.stringify(d))}catch{}}function Zu(t,e){try{return JSON.parse(localStorage.getItem(ra(t)+e)??"null")??void 0}catch{return}}var Jn=(t,e)=>localStorage.removeItem(ra(t)+e),uh=()=>Object.keys(localStorage).some(t=>t.startsWith("unsaved "));function aa(t){let e=ra(t);return Object.keys(localStorage).flatMap(o=>o.startsWith(e)?[o.slice(e.length)]:[]).sort().flatMap(o=>Zu(t,o)??[])}var Qk=300,Z=t=>t.now!==t.saved;function Io(t,e,n=crypto.randomUUID()){return{kind:t,id:n,file:"",version:null,shipped:!1,now:e,saved:void 0,unanswered:[]}}async function Pt(t,e,n=e){let o=await $f(e),i=Gk(t,JSON.parse(o.text),o.shipped),s=Zu(t,n),l=s?.copy&&o.shipped?await Yk(t,s,i):void 0;if(l)return Jn(t,n),Pt(t,l);let{version:d,shipped:c=!1}=o,p={kind:t,id:n,file:e,version:d,shipped:c,now:i,saved:i,unanswered:[]};return s&&Zk(p,s,o),p}var Gk=(t,e,n=!1)=>t.has_id&&!n&&e.id===void 0?{...e,id:crypto.randomUUID()}:e;async function Yk(t,e,n){if(!a.files?.[t.list].some(s=>s.file===e.copy))return;let o=wt(e.text),i=wt((await Wt(e.copy)).text);if(!(!o||!i||st(o)===st(n)))return Hu(t.written(o),i)?e.copy:void 0}function Zk(t,e,n){let o=wt(e.text);if(!o||st(o)===st(t.now))return Jn(t.kind,t.id);v(t,{now:o}),!(e.version===n.version||n.shipped)&&(v(t,{version:e.version}),_h(t,n))}function Ot(t,e){let n=t.now;v(t,{now:e,failed:void 0,...t.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),Lo(t),Tt("edited",{file:t,before:n})}var dh=new WeakMap,Xu=async t=>dh.get(t),on=t=>ch(t,()=>Xk(t)),Kn=t=>ch(t,()=>t.shipped?ph(t,mh):Promise.resolve());function ch(t,e){let n=Xu(t).then(e);return dh.set(t,n.catch(()=>{})),n}async function Xk(t){!Z(t)||t.theirs||await ph(t,t.shipped||!t.file?mh:fh)}async function ph(t,e){v(t,{failed:void 0});try{await e(t)}catch(n){throw n instanceof y&&v(t,{failed:C(n.complaint)}),n}}async function mh(t){let{kind:e,id:n,now:o}=t,i=t.shipped?t.file:void 0,s=e.written(o),l=await ye({kind:e,name:e.new_name(t),text:st(s),from:i,goes_on:i!==void 0&&e.name==="run",about_to:m=>Lo(t,m),is_own:({text:m})=>i!==void 0&&Hu(s,wt(m)??{})}),d=JSON.parse(l.text),c=qu(s,d),p=t.now===o?d:c(t.now);Jn(e,n),v(t,{id:l.file,file:l.file,version:l.version,shipped:!1,now:p,saved:d}),Z(t)&&Lo(t),i!==void 0&&Tt("copied",{file:t,from:i,renamed:c})}async function fh(t){let{version:e,now:n}=t,o=st(t.kind.written(n));v(t,{unanswered:[...new Set(t.unanswered).add(o)]});try{Ie(t.file);let i=await ui({file:t.file,version:e,text:o});zn(t.file,i.version),la(t,n,i.version)}catch(i){if(!(i instanceof y)||i.status!==409)throw i;zn(t.file,e),hh(t,i.answer),Z(t)&&!t.theirs&&await fh(t)}}function la(t,e,n){v(t,{saved:e,version:n,theirs:void 0,failed:void 0,unanswered:[]}),Z(t)?Lo(t):Jn(t.kind,t.id),Co(t.kind,t.file,e)}function hh(t,{version:e,text:n}){if(n===st(t.kind.written(t.now)))return la(t,t.now,e);let o=n!==null&&t.unanswered.includes(n);if(v(t,{unanswered:[]}),o)return v(t,{version:e,saved:void 0,theirs:void 0});let i=Z(t)||t.theirs?void 0:wt(n);i?tx(t,i,e):_h(t,{version:e,text:n})}function tx(t,e,n){Tt("giving_way",{file:t}),v(t,{set_aside:t.now,is_taken:!0,now:e}),la(t,e,n),F(`${t.file} was changed outside this page, and stands here as it is now.`),Tt("gave_way",{file:t})}var gh=t=>v(t,{set_aside:void 0,is_taken:void 0});function _h(t,{version:e,text:n}){v(t,{theirs:{version:e,text:n}}),Lo(t),F(n===null?`${t.file} was deleted outside this page. Save it again, or leave it deleted?`:`${t.file} was changed outside this page. Which version do you want to keep?`),Tt("conflict",{file:t})}function $h(t){if(!t.theirs)return;let e=wt(t.theirs.text);if(!e){let n=`what is in ${t.file} now is no ${t.kind.name}; keep what is on this page`;return v(t,{failed:n})}Tt("giving_way",{file:t}),v(t,{set_aside:t.now,now:e}),la(t,e,t.theirs.version),Tt("gave_way",{file:t})}function bh(t){t.theirs&&(v(t,{version:t.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),Lo(t),Tt("unwritten",{file:t}))}var Wo=({theirs:t})=>t?.text===null;function wh(t){Wo(t)&&(Jn(t.kind,t.id),v(t,{saved:t.now,theirs:void 0,failed:void 0}),F(`${t.file} stays deleted.`),Tt("left_deleted",{file:t}))}function yh(t){if(!t.set_aside)return;let{set_aside:e,now:n}=t,o=t.is_taken;f({typed:void 0}),Ot(t,e),v(t,{set_aside:o?void 0:n})}var vh=t=>(t.theirs??t).version;function kh(t,e){v(t,{id:e,file:e}),Tt("renamed",{file:t,renamed:n=>n})}async function xh(t){let{version:e,text:n}=await Wt(t.file),o=wt(n);if(!o||t.theirs||e===t.version)return;let i=qu(t.now,o);if(Z(t))return v(t,{version:e,now:i(t.now),saved:o});v(t,{version:e,now:o,saved:o}),Tt("renamed",{file:t,renamed:i})}var Th=t=>t.shipped||!t.file?[]:[[t.file,vh(t)]];async function td(t,e,n,o){let i=t.file,s=()=>vh(t)===e&&t.file===i;if(!s()||(await Xu(t),!s()))return!1;o(),await ed();let l=await ex(i,n);return await Xu(t),s()&&(hh(t,l),Z(t)&&!t.theirs&&Tt("unwritten",{file:t})),!0}async function ex(t,e){let n=await e(t);return n===null?{version:n,text:null}:Wt(t)}var ed=()=>new Promise(t=>setTimeout(t,Qk));var nx=400,ox=2e3,od=new WeakMap;function Sh(t,e){clearTimeout(od.get(t)),od.set(t,window.setTimeout(()=>{sn(t)},e))}var Vn=(t=a.run)=>Sh(t,nx),ix=t=>t===a.run||t===a.order?.open;async function sn(t=a.run){clearTimeout(od.get(t));try{await on(t),Z(t)&&!t.theirs&&ix(t)&&Vn(t)}catch(e){if(!(e instanceof y))throw e;e.may_pass&&Sh(t,ox)}}async function We(){for(let t of[a.run,a.order?.open])t?.file&&Z(t)&&await sn(t)}var Rh=Promise.resolve(),nd=0;function rn(){if(!nd&&!sx().length)return;++nd;let t=Rh.then(rx).finally(()=>--nd);return Rh=t.catch(()=>{}),t}var sx=()=>[...mt.map(t=>a.formulas[t]),...yt.map(t=>a.beside[t])].filter(t=>t!==void 0&&Z(t)&&!t.theirs);async function rx(){for(let t of mt){let e=a.formulas[t];!e||!Z(e)||e.theirs||(e.shipped&&t!=="apart"&&await Kn(a.run),await on(e))}for(let t of yt){let e=a.beside[t];e&&Z(e)&&!e.theirs&&await on(e)}}var Ee=t=>kn(a.run.file,t);function ee(t,e){let n=Ee(t);return e?.some(o=>o.file===n)?n:t}function Ah(t){let e=a.run.now,n=e.pour,o=e.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},s=ee(String(n?.mould??""),a.files?.moulds);return{file:mi("trial.run.json",a.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(e.name??""),sell:e.sell??"",...e.spoilage===void 0?{}:{spoilage:e.spoilage},pour:{mould:s,...i,formula:t,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:e.scales??{},...ax(e)}}}function ax(t){let e={};for(let n of["cut","pots","batch"])t[n]!==void 0&&(e[n]=t[n]);if(e.batch){let{whippings:n,...o}=e.batch;e.batch=o}return e}function jt(t){return t.length<2?t.join(""):`${t.slice(0,-1).join(", ")} and ${t.at(-1)}`}var Qn=({lines:t})=>Array.isArray(t)?t:[];function Rn(t){let e=Qn(t);return e.length>0&&e.every(({run:n,pieces:o})=>n&&typeof o=="number")}var ve=new Map,xs=new Set,lx={changed:{},unreadable:[]},Eo=()=>new Set([...mt.flatMap(t=>a.formulas[t]??[]),...yt.flatMap(t=>a.beside[t]??[])]);function gi(){let t=dx(),e=new Set([...Eo()].map(({file:o})=>o));for(let o of ve.keys())!t.has(o)&&!e.has(o)&&ve.delete(o);for(let o of xs)t.has(o)||xs.delete(o);let n=[...t].filter(o=>!ve.has(o));return n.length?ux(n):void 0}async function ux(t){for(let[e,n]of await Dh(t))ve.has(e)||ve.set(e,n)}async function Dh(t){let e=t.filter(o=>!xs.has(o)),n=e.length?await ds(new Map(e.map(o=>[o,null]))):lx;return ad(n.unreadable),new Map(t.map(o=>[o,n.changed[o]??null]))}var sd=async t=>(await Dh([t])).get(t)??null,rd=()=>new Map([...ve].filter(([t])=>!xs.has(t)));function dx(){let t=new Set,e=o=>{typeof o!="string"||!o||(t.add(Ee(o)),o.includes("..")||t.add(o))},n=a.run.now;t.add(Ee("studio.json")),e($(n,"/pour/mould")),e($(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])e($(o,"/mould"));for(let o of["pour","pipe"])a.formulas[o]||e($(n,`/${o}/formula`));for(let{file:o,now:i}of Eo()){let s=i.own_fats;typeof s=="string"&&s&&t.add(Xt(o)+s).add(s)}e($(a.beside.studio?.now,"/own_tips"));for(let o of cx())t.add(o);for(let o of yt)t.delete(a.beside[o]?.file??"");return t}function cx(){let{open:t}=a.order??{},e=new Set(t?Qn(t.now).map(({run:p})=>kn(t.file,p)):[]),{runs:n=[],formulas:o=[],moulds:i=[],fats:s=[],tips:l=[]}=a.files??{},d=[...n,...o,...i,...s,...l].filter(({shipped:p})=>!p),c=-1;for(;c!==e.size;){c=e.size;for(let{file:p,used_by:m=[]}of d)m.some(_=>e.has(_))&&e.add(p)}return t&&e.size&&e.add(kn(t.file,"studio.json")),e.delete(a.run.file),e}function Ph(t,{changed:e}){let n=Object.keys(e).filter(o=>ve.has(o)&&ve.get(o)===t.get(o));for(let o of n)ve.set(o,e[o]);return n}var ad=t=>t.forEach(e=>xs.add(e));function Oh(){return[...Eo()].flatMap(({file:t,version:e})=>{let n=ve.get(t)??e;return ve.delete(t),n===e?[]:[t]})}var Mh=0,No=()=>Mh;function ld(t){++Mh;for(let{file:e}of Eo())t.includes(e)&&id.add(e);f({is_old:!0,changed_beside:Fh(a.changed_beside,t)})}var id=new Set,Fh=(t,e)=>[...new Set([...t,...e])];function Bh(){if(!a.changed_beside.length)return;let t=a.changed_beside.filter(e=>!id.has(e)&&!lh(e,ve.get(e)??null));id.clear(),f({changed_beside:[]}),t.length&&(f({taken_in:{files:Fh(a.taken_in?.files??[],t),since:Date.now()}}),F(ud()))}function ud(){let{files:t=[]}=a.taken_in??{};if(!t.length)return"";let[e,n,o]=t.length===1?["was","it","it is"]:["were","them","they are"];return`${jt(t)} ${e} changed outside this page: the figures are of ${n} as ${o} now.`}var px=5e3;function Ch(){a.taken_in&&Date.now()-a.taken_in.since>px&&f({taken_in:void 0})}var mx=1e3,fx=450,ua=!1,jo=!1,dd=0;function ct(){f({is_old:!0}),ua?jo=!0:_i()}async function _i(){if(ua){jo=!0;return}ua=!0,Lh(!1);try{do jo=!1,await hx();while(jo)}finally{ua=!1,Lh(!0)}}async function Wh(){let{run:t}=a,e={file:t.file,run:t.now},n=await bf(e)?.catch(()=>{});!n||t!==a.run||a.plan||uh()||(f({plan:n,planned:e}),Yu(n))}var Lh=t=>{document.documentElement.dataset.settled=String(t)};function Ih(){let{run:t}=a,{apart:e}=a.formulas,{file:n,now:o}=t;return()=>{let i=t===a.run&&(n===t.file||o===t.now);return e===a.formulas.apart&&(e!==void 0||i)}}async function hx(){let t=Ih();try{let e=rn();e&&await e;let n=gi();n&&await n,t=Ih();let{apart:o}=a.formulas;if(Tn(o?"apart":"run"))return f({is_old:!0});let i=No(),s=o?Ah(o.file):{file:a.run.file,run:a.run.now},l=await Nr(s);if(window.clearTimeout(dd),!t())return void(jo=!0);f({plan:l,planned:s,complaint:void 0}),Yu(l);let d=i===No();f({is_old:jo||!d}),d&&Bh()}catch(e){if(!(e instanceof y))throw e;if(!t())return void(jo=!0);gx(e)}}function gx(t){f({is_old:!0}),window.clearTimeout(dd);let e=()=>{f({complaint:t.complaint}),rh(t.complaint)};a.complaint||!a.plan?e():dd=window.setTimeout(e,fx),t.may_pass&&window.setTimeout(ct,mx)}var Eh=2e3,ce=t=>f({bench:{...a.bench,...t}}),_x=()=>ce({acts:de()});addEventListener("storage",({key:t})=>{t===hi()&&_x()});function da(){let{file:t}=a.run;!t||a.bench.run===t||(f({bench:{run:t,batches:[],complaints:[],acts:de()}}),Sn().then(md))}function Nh(t){let{file:e}=a.run;oh(t,e),a.bench.run===t&&ce({run:e,acts:de()}),a.bench.run===e&&Sn()}function jh(){let{run:t,version:e}=a.bench;return e===void 0||t!==a.run.file?void 0:{run:t,version:e}}var Ts=0;async function Sn(){let{run:t}=a.bench,e=Ts;try{let n=await zf(t);if(t!==a.bench.run)return;if(e!==Ts)return await Sn();Hh(n)}catch(n){if(!(n instanceof y))throw n;if(t!==a.bench.run)return;ce({failed:C(n.complaint)}),qh(n)&&setTimeout(()=>a.bench.failed!==void 0&&void Sn(),Eh)}}var Hh=({batches:t,version:e,complaints:n=[]})=>ce({batches:t,version:e,complaints:n.map(({line:o})=>o),failed:void 0}),qh=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e),Gn=t=>a.bench.batches.find(e=>e.batch===t),pd=t=>a.bench.acts.filter(({run:e,batch:n})=>e===a.bench.run&&n===t),Yn=t=>pd(t).length>0;function Zn(t,e){let n=pd(t).find(i=>i.key===e),o=Gn(t)?.ticks[e]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function Ho(t){let e=pd(t).find(n=>n.reading!==void 0);return(e?e.reading:Gn(t)?.weigh_cup)??""}function Uh(t,e,n){let{run:o}=a.bench,s=Gn(t)!==void 0||!a.planned?void 0:st(a.planned.run);nh({run:o,batch:t,seen:e,text:s,...n}),ce({acts:de(),chosen:t,told:void 0}),md()}var zh=(t,e,n,o)=>Uh(t,e,{key:n,done:o}),Jh=(t,e,n)=>Uh(t,e,{reading:n||null}),cd=!1;async function md(){if(!cd){cd=!0;try{await navigator.locks.request(hi(),$x)}finally{cd=!1}de().length&&setTimeout(()=>{md()},Eh)}}async function $x(){for(let t=Vu();t;t=Vu())if(!await bx(t))return}async function bx(t){let{id:e}=t;try{let n=await wx(t);return++Ts,na(o=>o.id===e),yx(n,t.run),!0}catch(n){if(!(n instanceof y))throw n;return qh(n)?(ce({unsent:C(n.complaint)}),!1):(await vx(t,n),!0)}}function wx({run:t,text:e,batch:n,seen:o,key:i,done:s,reading:l}){let d={run:t,text:e,batch:n,seen:o};return i!==void 0?Jf({...d,key:i,done:s??!1}):Kf({...d,reading:l??null})}function yx(t,e){let n=de();if(e!==a.bench.run)return ce({acts:n,unsent:void 0});let i=[...a.bench.batches.filter(s=>s.batch!==t.batch),t].sort((s,l)=>s.batch-l.batch);ce({acts:n,batches:i,unsent:void 0})}async function vx(t,{complaint:e}){++Ts,na(o=>o.run===t.run&&o.batch===t.batch);let n=`Not taken: ${C(e)}.`;ce({acts:de(),unsent:void 0,told:{batch:t.batch,words:n}}),F(n),ct(),await Sn()}async function Rs(t){let{run:e}=a.bench;await Kh(t,async()=>{let n=await Vf(e,t);return na(o=>o.run===e&&o.batch===t),n})}var fd=t=>Kh(t,()=>Qf(a.bench.run,t));async function Kh(t,e){let{run:n}=a.bench;try{let o=await e();if(++Ts,n!==a.bench.run)return;Hh(o),ce({acts:de(),told:void 0,chosen:t})}catch(o){if(!(o instanceof y))throw o;ce({told:{batch:t,words:C(o.complaint)}})}}var Vh=t=>ce({chosen:t,told:void 0}),Qh=()=>ce({told:void 0});var kx=300,xx=1200,ca="",Gh=0;function Ss(){let t={run:{file:a.run,now:a.run.now}};for(let e of mt){let n=a.formulas[e];n&&(t[e]={file:n,now:n.now})}for(let e of yt){let n=a.beside[e];n&&(t[e]={file:n,now:n.now})}return t}function qo(t=""){let e=performance.now();t&&t===ca&&e-Gh<=xx&&a.past.length||hd(Ss()),f({future:[]}),ca=t,Gh=e}var hd=t=>f({past:[...a.past,t].slice(-kx)});function Xn(t){hd(Yh(Ss(),t,()=>t.saved??{}))}function Yh(t,e,n){let o=Object.entries(t).map(([i,s])=>s.file===e?[i,{file:e,now:n(s.now)}]:[i,s]);return Object.fromEntries(o)}function gd(t,e){let n=o=>o.map(i=>Yh(i,t,e));f({past:n(a.past),future:n(a.future)})}function As(){let t=a.past.at(-1);t&&(f({past:a.past.slice(0,-1),future:[...a.future,Ss()]}),Zh(t,"Undone"))}function _d(){let t=a.future.at(-1);t&&(f({past:[...a.past,Ss()],future:a.future.slice(0,-1)}),Zh(t,"Redone"))}function Zh(t,e){ca="",f({typed:void 0});for(let n of[...yt,...mt,"run"])Tx(n,t);F(e)}function Tx(t,e){let n=e[t];if(oa(t))return Rx(t,n);let o=t==="run"?n?.file===a.run:a.formulas[t]!==void 0;!n||!o||(t!=="run"&&xn(t,n.file),n.file.now!==n.now&&Ot(n.file,n.now))}function Rx(t,e){e&&e.file===a.beside[t]&&e.file.now!==e.now&&Ot(e.file,e.now)}var $i=t=>t===a.run||mt.some(e=>a.formulas[e]===t)||yt.some(e=>a.beside[e]===t);Le("giving_way",({file:t})=>{$i(t)&&(ca="",hd(Ss()),f({typed:void 0}))});for(let t of["copied","renamed"])Le(t,({file:e,renamed:n})=>gd(e,n));var Sx=1200,$d="",Xh=0;function bi(t,e=""){let n=performance.now(),o=e&&e===$d&&n-Xh<=Sx&&t.past.length;v(t,{past:o?t.past:[...t.past,t.open.now],future:[]}),[$d,Xh]=[e,n]}function pa(t){let e=t.past.at(-1);e&&(v(t,{past:t.past.slice(0,-1),future:[...t.future,t.open.now]}),tg(t,e,"Undone"))}function ma(t){let e=t.future.at(-1);e&&(v(t,{past:[...t.past,t.open.now],future:t.future.slice(0,-1)}),tg(t,e,"Redone"))}function tg({open:t},e,n){$d="",f({typed:void 0}),Ot(t,e),F(n)}function to(t){return t==="run"?a.run:t==="order"?a.order?.open:oa(t)?a.beside[t]:a.formulas[t]}var Ax=t=>to(t)?.now,g=(t,e)=>$(Ax(t),e),D=(t,e)=>String(g(t,e)??"");function tt(t,e){let n=g(t,e);return Array.isArray(n)?n:[]}function ft(t,e,n){let o=g(t,e)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function eg(t,e){t==="order"&&a.order?bi(a.order,e):qo(e===void 0?"":`${t} ${e}`)}function X(t,e,n){let o=to(t);!o||$(o.now,e)===n||(eg(t,e),Ot(o,M(o.now,e,n)))}function ng(t,e){let n=to(t);n&&(eg(t),f({typed:void 0}),Ot(n,e(n.now)))}function Ne(t){qo(),f({typed:void 0});for(let[e,n]of t){let o=to(e);o&&Ot(o,n(o.now))}}var wd=(t,e)=>{let{[t]:n,...o}=a.beside;f({beside:e?{...o,[t]:e}:o})};function fa(t){for(let e of yt)a.beside[e]===t&&wd(e,void 0)}async function Dx(t,e){try{return await Pt(t,e)}catch(n){if(!(n instanceof y||n instanceof SyntaxError))throw n;return}}async function eo(t,e,n,o=()=>!0){let i=()=>a.beside[t]?.file===n?a.beside[t]:void 0;if(i())return i();let s=await Dx(e,n);return i()||!o()?i():(wd(t,s),s&&Z(s)&&(Xn(s),Tt("unwritten",{file:s})),s?.theirs&&Tt("conflict",{file:s}),s)}var bd=()=>Ee("studio.json");async function wi(t=!1){let e=bd(),n=(a.files?.studios??[]).some(o=>o.file===e);a.beside.studio?.file!==e&&(n||t?await eo("studio",ws,e,()=>e===bd()):wd("studio",void 0))}async function ha(){a.run.shipped&&await Kn(a.run);let t=bd();await eo("studio",ws,t)||(await Px(t),await eo("studio",ws,t))}async function Px(t){try{Ie(t);let{version:e}=await ui({file:t,version:null,text:st({schema:"brimwright.studio/1"})});zn(t,e)}catch(e){if(!(e instanceof y)||e.status!==409)throw e}Co(ws,t)}var og=(t,e)=>Xt(t.file)+e;async function Ox(t){try{return wt((await Wt(t)).text)!==void 0}catch(e){if(!(e instanceof y))throw e;return!1}}async function ga(t){let e=a.formulas[t];if(!e)return;e.shipped&&await Kn(e);let n=String($(e.now,"/own_fats")??"");if(n){let l=og(e,n);return eo("own_fats",nn,await Ox(l)?l:n)}let o=(a.files?.fats??[]).find(l=>!l.shipped&&Xt(l.file)===Xt(e.file)),i={schema:"brimwright.fats/1",fats:[]},s=o?.file??await vd(nn,og(e,"my.fats.json"),i);return X(t,"/own_fats",ue(s)),eo("own_fats",nn,s)}async function yd(){a.run.shipped&&await Kn(a.run);let t="/pipe/beads/own_tips",n=String($(a.run.now,t)??"")||String($(a.beside.studio?.now,"/own_tips")??"");if(n)return eo("own_tips",Un,Ee(n));let o=Xt(a.run.file),i=(a.files?.tips??[]).find(d=>!d.shipped&&Xt(d.file)===o),s={schema:"brimwright.tips/2",tips:[]},l=i?.file??await vd(Un,`${o}my.tips.json`,s);return a.beside.studio?X("studio","/own_tips",ue(l)):X("run",t,ue(l)),eo("own_tips",Un,l)}async function Ds(t,e){await eo(t===nn?"own_fats":"own_tips",t,e)&&f({held_open:e})}function no(){let{view:t,held_open:e,beside:n}=a,o=t==="fats"?n.own_fats:t==="tips"?n.own_tips:void 0;return o&&o.file===e?o:void 0}async function _a(t,e){let n=t===nn;await Ds(t,await vd(t,n?"my.fats.json":"my.tips.json",n?{schema:"brimwright.fats/1",fats:[e]}:{schema:"brimwright.tips/2",tips:[e]}))}async function vd(t,e,n){let{file:o}=await ye({kind:t,name:e,text:st(n)});return Co(t,o),o}function ig(t,e){let n=(i,s)=>String($(i,s)??"").endsWith(ue(e));for(let i of mt)t===a.beside.own_fats&&n(a.formulas[i]?.now,"/own_fats")&&X(i,"/own_fats",t.file);let o="/pipe/beads/own_tips";t===a.beside.own_tips&&n(a.run.now,o)&&X("run",o,t.file)}var Uo=[],yi=[],Ps=()=>Uo.at(-1),xd=()=>yi.at(-1);function wa(t){Uo=[...Uo,t],yi=[],f({list_told:t.words}),F(t.words)}async function rg(){let t=Ps();t&&(await t.undo(),Uo=Uo.slice(0,-1),yi=[...yi,t],f({list_told:""}),F("Undone"),await ke())}async function ag(){let t=xd();t&&(await t.redo(),yi=yi.slice(0,-1),Uo=[...Uo,t],f({list_told:t.words}),F("Redone"),await ke())}async function ke(){let[t,e]=await Promise.all([Er(),Ym()]);f({files:t,removed:e})}async function lg(t,e){let{$schema:n,...o}=JSON.parse((await Wt(e.file)).text),i=`${e.name||vi(e.file)}, copy`,s={...o,...t.called&&{[t.called]:i},...t.has_id?{id:crypto.randomUUID()}:{}},l=t.called?t.new_name(Io(t,s)):Ce(i,Td(e.file)),{file:d}=await ye({kind:t,name:l,text:st(s),from:e.file});await ke();let c="";return wa({words:`Copied ${e.name||e.file}.`,undo:async()=>c=await $a(d,!0),redo:()=>ba(d,c)}),d}var Td=t=>/(\.(run|order|formula|fats|tips))?\.json$/.exec(t)?.[0]??"",vi=t=>ue(t).slice(0,-Td(t).length||void 0),ug=(t,e)=>Xt(t)+e+Td(t),sg=t=>[a.run,a.order?.open,...mt.map(e=>a.formulas[e]),...yt.map(e=>a.beside[e])].find(e=>e?.file===t);async function dg(t,e,n){let o={name:e.name,note:e.note,stem:vi(e.file)};await kd(t,e.file,n),await ke();let i=ug(e.file,n.stem);wa({words:`Changed ${n.name||i}.`,undo:()=>kd(t,i,o),redo:()=>kd(t,e.file,n)})}async function kd(t,e,{name:n,note:o,stem:i}){let s=sg(e),l=s??await Pt(t,e),{note:d,...c}=l.now,p={...c,...o&&{note:o}},m=t.called?M(p,`/${t.called}`,n||void 0):p;if(st(m)!==st(l.now)&&(s&&$i(s)&&qo(),s===a.order?.open&&a.order&&bi(a.order),Ot(l,m),await on(l),l.theirs))throw new Error(`${e} was changed outside this page just now. Look at it again.`);let _=ug(e,i);if(_===e)return;[e,_].forEach(Ie);let{renamed_in:b}=await Vm(e,_);b.forEach(Ie),s&&kh(s,_);for(let w of b){let x=sg(w);x&&await xh(x)}}async function $a(t,e){Ie(t);let{removed:n}=await Qm(t,e);a.run.file===t&&fi(),a.order?.open.file===t&&f({order:void 0});let o=yt.map(i=>a.beside[i]).find(i=>i?.file===t);return o&&fa(o),n}function ba(t,e){return Ie(t),Gm(e)}async function cg(t,e){let n=await $a(t.file,e);await ke(),wa({words:`Removed ${t.name||t.file}.`,undo:()=>ba(t.file,n),redo:async()=>n=await $a(t.file,!0)})}async function pg({removed:t,file:e,name:n}){await ba(e,t),await ke();let o="";wa({words:`${n||e} is back.`,undo:async()=>o=await $a(e,!0),redo:()=>ba(e,o)})}async function mg({removed:t,file:e,name:n}){f({removed:await Zm(t),list_told:""}),F(`${n||e} is deleted for good.`)}var fg=0;function vt(){let t=++fg;return()=>t===fg}function hg(t){let e=$(a.run.now,`/${t}/formula`);return typeof e=="string"&&e?ee(e,a.files?.formulas):void 0}async function oo(){await Promise.all(["pour","pipe"].map(Mx))}async function Mx(t){let e=hg(t),n=()=>e!==void 0&&a.formulas[t]?.file===e;if(n()||(xn(t,gg(e)),e===void 0||n()))return;let o=await Fx(e);if(!o||hg(t)!==e||n())return;let i=gg(e);xn(t,i??o),!i&&(Z(o)&&(Xn(o),Tt("unwritten",{file:o})),o.theirs&&Tt("conflict",{file:o}))}var gg=t=>mt.map(e=>a.formulas[e]).find(e=>e&&e.file===t),Rd=new Map;function Fx(t){let e=Rd.get(t)??Pt(Bo,t).catch(Bx);return Rd.set(t,e),e.finally(()=>Rd.delete(t))}function Bx(t){if(!(t instanceof y||t instanceof SyntaxError))throw t}var Os=(t,e=0)=>t.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(e-i).toFixed(2)}`).join("L")}Z`).join("");function ki(t){let e=new DataView(t).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(t,20,e))),o=s=>20+e+8+(n.bufferViews[n.accessors[s].bufferView].byteOffset??0),i=s=>n.accessors[s].count;return n.meshes.map(({name:s,primitives:[{attributes:l,indices:d,material:c}]})=>({name:s,positions:new Float32Array(t,o(l.POSITION),i(l.POSITION)*3),indices:new Uint32Array(t,o(d),i(d)),colour:n.materials[c].pbrMetallicRoughness.baseColorFactor}))}function $g(t,e,n="upright"){let[o,i,s]=n==="upright"?[1,2,1]:[2,1,-1],l=[],{positions:d,indices:c}=t;for(let p=0;p<c.length;p+=3){let m=[];for(let _=0;_<3;++_){let b=3*c[p+_],w=3*c[p+(_+1)%3],x=d[b+i]-e,Q=d[w+i]-e;if(x>0==Q>0)continue;let It=x/(x-Q),To=[1e3*(d[b]+It*(d[w]-d[b])),1e3*s*(d[b+o]+It*(d[w+o]-d[b+o]))];x>0?m.push(To):m.unshift(To)}m.length===2&&l.push([m[0],m[1]])}return l}function bg(t){let e=([i,s])=>`${i.toFixed(3)} ${s.toFixed(3)}`,n=new Map;for(let i of t){let s=e(i[0]);n.set(s,[...n.get(s)??[],i])}let o=[];for(let i of t){let s=[],l=n.get(e(i[0]))?.shift();for(;l;)s.push(l[0]),l=n.get(e(l[1]))?.shift();s.length>2&&o.push(s)}return o}function Ms(t){let e=t.positions,[n,o,i,s,l,d]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<e.length;p+=3)i=Math.min(i,e[p]),s=Math.max(s,e[p]),l=Math.min(l,e[p+1]),d=Math.max(d,e[p+1]),n=Math.min(n,e[p+2]),o=Math.max(o,e[p+2]);let c=n+(o-n)*.50137;return{loops:bg($g(t,c)),left:1e3*i,right:1e3*s,floor:1e3*l,brim:1e3*d,cut_y:-1e3*c}}function wg(t,e){let[n,o]=[e.floor/1e3,(e.brim-e.floor)/1e3];return[.999,.50137].map(s=>bg($g(t,n+s*o,"level"))).reduce((s,l)=>_g(l)>1.001*_g(s)?l:s)}function _g(t){let[e,n]=[1/0,-1/0];for(let o of t)for(let[i]of o)[e,n]=[Math.min(e,i),Math.max(n,i)];return Math.max(0,n-e)}function Sd(t,e){let[n,o]=[1/0,-1/0];for(let i of t.loops)i.forEach(([s,l],d)=>{let[c,p]=i[(d+1)%i.length];if(!(Math.min(l,p)>e||Math.max(l,p)<e))for(let m of l===p?[s,c]:[s+(e-l)/(p-l)*(c-s)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[t.left,t.right]}var yg=40,Cx=2e3,Ad=0;async function vg(t){let e=await tn({kind:"glb",gauge:t}),n=ki(await e.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function xi(t){let[e,n]=await Promise.all([jn(t),vg(t)]),o=Ms(n);return{gauge:e,outline:o,above:wg(n,o)}}async function Lx(t){let{pockets:e}=await jn(t),n=e[0].brim_mm-e[0].floor_mm-.001,o=Array.from({length:yg},(i,s)=>`${(n*(s+1)/yg).toFixed(4)} mm`);return jn({...t,depth:o})}function je(){Ix()}async function Ix(){let t=$(a.run.now,"/pour/mould");if(typeof t!="string")return;let e=++Ad,n=ee(t,a.files?.moulds);try{let[o,i]=await Promise.all([Lx({file:n}),vg({file:n})]);e===Ad&&f({measured:{mould:n,gauge:o,outline:Ms(i)},measuring_failed:void 0})}catch(o){if(e!==Ad)return;if(!(o instanceof y))throw o;f({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(je,Cx)}}var Dd=(t,e="")=>Ro("GET",`/api/record?run=${encodeURIComponent(t)}&batch=${encodeURIComponent(e)}`),kg=t=>Xe("/api/record/begin",t),ya=t=>Xe("/api/record/note",t);var Wx=1e4,Od=2500,Md=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",Md);var va=[],Ti=()=>`notes ${a.files?.folder??""}`;function An(){try{return[...JSON.parse(localStorage.getItem(Ti())??"[]"),...va]}catch{return va}}function Fd(t){try{t.length?localStorage.setItem(Ti(),JSON.stringify(t)):localStorage.removeItem(Ti()),va=[]}catch{va=t}}var Pd=(t,e)=>t.batch===e.batch&&t.key===e.key,an=(t,e)=>a.record.acts.filter(n=>Pd(n,{batch:t,key:e})).at(-1);function xg(t){let e=An(),n=e.filter(i=>Pd(i,t)).at(-1),o={...t,seen:n?.seen??t.seen,id:crypto.randomUUID(),tab:Md,at:Date.now()};Fd([...e.filter(i=>!Pd(i,t)||i.was_sent&&!i.refused),o])}var Bd=t=>Fd(An().map(t)),ka=(t,e)=>Bd(n=>n.id===t?{...n,...e}:n),Fs=t=>Fd(An().filter(e=>!t(e))),Ex=({is_typed:t,lacks:e,refused:n,at:o})=>!n&&!e&&(!t||Date.now()-o>=Od),Cd=()=>An().find(t=>Ex(t)&&(t.tab===Md||Date.now()-t.at>Wx));var Tg=2e3,Ht=t=>f({record:{...a.record,...t}}),Ri=()=>Ht({acts:An()});addEventListener("storage",({key:t})=>{t===Ti()&&Ri()});function xa(){let{file:t}=a.run;!t||a.record.run===t||(f({record:{run:t,batches:[],acts:An(),chosen:Nx(t)}}),io().then(Bs))}function Rg(t){a.record.run===t&&(Ht({run:a.run.file}),io())}var Sg=t=>`record ${t}`,Nx=t=>sessionStorage.getItem(Sg(t))??void 0,Wd=()=>a.record.run===a.run.file?a.record.version:void 0,Id=0;async function io(){let{run:t,chosen:e}=a.record,n=Id;try{let o=await Dd(t,e);if(t!==a.record.run)return;if(n!==Id||e!==a.record.chosen)return await io();let{batches:i,run_batches:s}=o.record;Ht({batches:i,of:s??a.record.of,version:o.version,failed:void 0})}catch(o){if(!(o instanceof y))throw o;if(t!==a.record.run)return;Ht({failed:C(o.complaint)}),Ag(o)&&setTimeout(()=>a.record.failed!==void 0&&void io(),Tg)}}var Ag=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e);function Ta({record:t},e){if(++Id,e!==a.record.run)return;let n=new Set(t.batches.map(({begun:d})=>d.id)),o=d=>n.has(d.begun.id),i=d=>t.batches.find(({begun:c})=>c.id===d.begun.id)??d,s=t.batches.filter(({begun:d})=>!a.record.batches.some(c=>c.begun.id===d.id)),l=[...a.record.batches.map(d=>o(d)?i(d):d),...s];Ht({batches:l,of:t.run_batches??a.record.of})}function Ra(){let{batches:t,chosen:e}=a.record;return t.find(({begun:n})=>n.id===e)??t.at(-1)}var Ed=(t,e)=>sessionStorage.setItem(Sg(t),e);function zo(t){Ed(a.record.run,t),Ht({chosen:t}),io()}var Jo=(t,e)=>a.record.batches.filter(n=>n.number===t&&(!e||new Date(n.begun.begun_at)>=new Date(e))).at(-1),Sa=({pieces:t,written:e})=>`${t} ${t===1?"piece":"pieces"}, ${e}`;function Aa({blanks:t,cured:e,rows:n},o){let i=/^cured\.(.+)$/.exec(o)?.[1],s=i&&e?.find(({on:l})=>l===i);return i?s?Sa(s):"":[...t??[],...n??[]].find(l=>l.key===o)?.noted??""}function Nd(t,{key:e,text:n,value:o,is_left:i,lacks:s}){let l=Aa(t,e),d=an(t.begun.id,e);if(o===l&&!s&&(!d||!d.was_sent&&d.seen===l))return d&&Fs(({id:m})=>m===d.id),Ri();if(d?.value===o&&!d.lacks==!s&&(d.refused??!d.is_typed))return;let{run:p}=a.record;xg({run:p,batch:t.begun.id,key:e,text:n,value:o,seen:l,is_typed:!i,lacks:s}),Ri(),i?Bs():setTimeout(()=>{Bs()},Od+50)}var so=(t,e,n)=>Nd(t,{key:e,text:n,value:n,is_left:!0});function Dg(t){let{refused:e,value:n}=t;if(!e)return;let{answers:o={confirmed:n}}=e,i=(l=[],d)=>d===void 0?l:[...l,d],s=e.is_asked?{confirmed:i(t.confirmed,o.confirmed),beyond:i(t.beyond,o.beyond)}:{seen:e.noted??t.seen};ka(t.id,{...s,refused:void 0}),Ri(),Bs()}function Pg(t){Fs(({id:e})=>e===t.id),Ri()}var Ld=!1;async function Bs(){if(!Ld){Ld=!0;try{await navigator.locks.request(Ti(),jx)}finally{Ld=!1}An().some(t=>!t.refused&&!t.lacks)&&setTimeout(()=>{Bs()},Tg)}}async function jx(){for(let t=Cd();t;t=Cd())if(!await qx(t))return}var Hx=({batch:t,run:e})=>a.record.batches.some(({begun:n})=>n.id===t)?a.record.run:e;async function qx(t){let{id:e,batch:n,key:o,value:i,seen:s,confirmed:l,beyond:d}=t,c=Hx(t);ka(e,{was_sent:!0});try{let p=await ya({run:c,batch:n,act:e,set:{[o]:i||null},seen:{[o]:s||null},confirmed:l,"beyond-stock":d});return Fs(m=>m.id===e),Ux(t,p),Ta(p,c),Ht({acts:An(),unsent:void 0}),!0}catch(p){if(!(p instanceof y))throw p;return Ag(p)?(Ht({unsent:C(p.complaint)}),!1):(await zx(t,p),!0)}}function Ux({batch:t,key:e},{record:n}){let o=n.batches.find(({begun:i})=>i.id===t);Bd(i=>i.batch!==t?i:i.key===e?o?{...i,seen:Aa(o,e)}:i:i.refused&&!i.refused.is_asked&&i.refused.noted===void 0?{...i,refused:void 0}:i)}async function zx({id:t,value:e},{complaint:n}){let{asks:o,choices:i,problem:s}=n,l=o==="seen"?i?.[0]?.seen??"":void 0,d=l===!0?"":l,c=o?s:C(n);d===e?Fs(p=>p.id===t):ka(t,{refused:{words:c,is_asked:o==="confirmed"||o==="beyond-stock",noted:d,...Jx(i)}}),Ri(),await io()}function Jx(t=[]){let e=t[0]?.confirmed,n=t[0]?.["beyond-stock"];return e===void 0&&n===void 0?{}:{answers:{confirmed:e,beyond:n},is_lye:e===Kx}}var Kx="lye-heavy",Da=t=>a.record.acts.filter(e=>e.batch===t&&(e.refused??e.lacks)).length;async function Pa(t,e){if(!t||!e)return;let n=t.blanks?t:await Vx(t.begun.id),o=n?.blanks?.filter(jd)??[];n&&o.length===1&&so(n,o[0].key,e)}async function Vx(t){try{return(await Dd(a.record.run,t)).record.batches.find(({begun:e})=>e.id===t)}catch(e){if(!(e instanceof y))throw e;return}}var jd=({key:t})=>/^topping(-\d+)?\.cup$/.test(t);var Og=()=>Ro("GET","/api/stock?names"),Mg=t=>Xe("/api/stock/act",t),Fg=t=>Ro("GET",`/api/trail?of=${encodeURIComponent(t)}`);var Qx=2e3,Dn=t=>f({stock:{...a.stock,...t}}),Bg=()=>a.view==="shelf"||a.view==="trail",Oa=()=>Bg()?a.stock.version:void 0,Gx=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e);async function ro(){try{let{version:e,stock:n}=await Og();Dn({version:e,list:n,failed:void 0})}catch(e){if(!(e instanceof y))throw e;Dn({failed:C(e.complaint)}),Gx(e)&&setTimeout(()=>Bg()&&a.stock.failed!==void 0&&void ro(),Qx)}let{trail:t}=a.stock;a.view==="trail"&&t&&await Cg(t.of)}function xe(t){let e=a.stock.trail?.of===t;f({view:"trail",stock:{...a.stock,trail:e?a.stock.trail:{of:t}}}),a.stock.version===void 0?ro():Cg(t)}async function Cg(t){let e=n=>a.stock.trail?.of===t&&Dn({trail:n});try{let{version:n,trail:o}=await Fg(t);e({of:t,trail:o}),Dn({version:n})}catch(n){if(!(n instanceof y))throw n;e({of:t,complaint:C(n.complaint)})}}var Lg=()=>`shelf ${a.files?.folder??""}`;function Hd(t){sessionStorage.setItem(Lg(),JSON.stringify(t)),Dn({forms:t})}function Ig(){try{Dn({forms:JSON.parse(sessionStorage.getItem(Lg())??"[]")})}catch{Dn({forms:[]})}}var qd=(t,e)=>t.kind===e.kind&&t.of===e.of,Pn=t=>a.stock.forms.find(e=>qd(e,t));function Ud(t){if(Pn(t))return;let e={on:Yx(),...t.typed};Hd([...a.stock.forms,{sources:[],confirmed:[],act:crypto.randomUUID(),...t,typed:e}]),Dn({told:void 0})}var zd=t=>Hd(a.stock.forms.filter(e=>!qd(e,t))),Si=(t,e)=>Hd(a.stock.forms.map(n=>qd(n,t)?{...n,...e}:n)),He=(t,e)=>Si(t,{...e,typed:{...t.typed,...e.typed},act:crypto.randomUUID(),confirmed:[],complaint:void 0});function Ko(t,e,n){Si(t,{complaint:{file:"",field:e,problem:n,remedy:"",line:n}}),F(n)}async function Ma(t,e){let n=Pn(t);if(!n||n.is_asking)return!1;Si(t,{is_asking:!0,complaint:void 0});try{let{stock:o}=await Mg({...e,act:n.act,confirmed:n.confirmed,seen:n.seen}),i=o.done.length?o.done:["It was recorded already."];return zd(t),Dn({told:{of:t.of,sentences:i}}),F(i.join(" ")),await ro(),!0}catch(o){if(!(o instanceof y))throw o;return Si(t,{is_asking:!1,complaint:o.complaint}),F(`Not recorded: ${o.complaint.problem}`),o.complaint.asks==="seen"&&await ro(),!1}}function Wg(t,e){Si(t,{confirmed:[...t.confirmed,e],complaint:void 0})}var Eg=(t,e)=>Si(t,{seen:e,complaint:void 0});function Yx(){let t=new Date;return[t.getFullYear(),t.getMonth()+1,t.getDate()].map(e=>String(e).padStart(2,"0")).join("-")}var Cs=()=>f({own_fats:{}});function ao(t){let e=Ls(t);return Array.isArray(e)?[...e,...a.fats]:a.fats}function Ls(t){let e=a.formulas[t],n=$(e?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||e===void 0)return;let o=a.beside.own_fats;if(o&&[Xt(e.file)+n,n].includes(o.file))return jg(o.now)??"none";let i=`${e.file}
${n}`,s=a.own_fats[i];return s||(Ng(i,"waiting"),Zx(n,e.file).then(l=>Ng(i,l)),"waiting")}var Ng=(t,e)=>f({own_fats:{...a.own_fats,[t]:e}});async function Zx(t,e){for(let n of new Set([Xt(e)+t,t])){let o=jg(await Xx(n));if(o)return o}return"none"}var jg=t=>Array.isArray(t?.fats)?t.fats.map(tT):void 0;async function Xx(t){try{return wt((await Wt(t)).text)}catch{return}}var tT=({id:t,name:e,saponification_value:n})=>({id:String(t??""),name:String(e??t??""),own:eT(n)});function eT(t){if(t===null||typeof t!="object")return String(t??"");let{low:e,high:n}=t;return`${String(e)} to ${String(n)}`}var Ai=[],Is;function Fa(){Ai.length=0;for(let{file:t,shipped:e}of a.files?.moulds??[])e||Ai.push(t);Is===void 0&&Hg()}function Jd(t){let e=a.own_moulds[t];return!e&&t!==Is&&!Ai.includes(t)&&Ai.push(t),Is===void 0&&Ai.length&&Hg(),e}async function Hg(){for(;(Is=Ai.shift())!==void 0;){let t=Is,e=await oT(t);e&&f({own_moulds:{...a.own_moulds,[t]:e}})}}var nT=2e3;async function oT(t){try{let{pockets:e}=await jn({file:t});return{brimful_ml:e[0].brimful_ml,cavities:e.length}}catch(e){if(!(e instanceof y))throw e;if(e.may_pass){window.setTimeout(()=>Jd(t),nT);return}let{field:n,problem:o,remedy:i}=e.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var zg=()=>f({own_tips:{}}),Kd=!1;function Ws(){return!a.tips&&!Kd&&(Kd=!0,uf().then(t=>f({tips:t}),Jg).finally(()=>Kd=!1)),a.tips??[]}function Vd(t){let e=Ee(t),n=a.beside.own_tips;if(n?.file===e)return Ug(n.now);let o=a.own_tips[e];return o||!t||a.typed?o??[]:(qg(e,[]),Wt(e).then(({text:i})=>qg(e,Ug(wt(i))),Jg),[])}var qg=(t,e)=>f({own_tips:{...a.own_tips,[t]:e}});function Ug(t){let e=t?.tips;return(Array.isArray(e)?e:[]).map(n=>({name:String(n.name)}))}function Jg(t){if(!(t instanceof y))throw t}var Ba=300,iT=5e3,Yg=2e3,sT=500,Kg=!1,Es=new AbortController,Zg=()=>Es.abort(),Xg=()=>document.visibilityState==="hidden";function Ca(){if(Kg)return;Kg=!0;let t=async()=>{Es=new AbortController;let e=await rT(Es).then(()=>Xg()?iT:Ba,()=>Es.signal.aborted?Ba:Yg);await Vg(Ba),await Vg(e-Ba,Es.signal),t()};t()}var Vg=(t,e)=>new Promise(n=>{if(t<=0||e?.aborted)return n();setTimeout(n,t),e?.addEventListener("abort",()=>n())}),t_=()=>[a.run,...a.order?[a.order.open]:[],...a.mould?[a.mould.open]:[],...Eo()],Qd=()=>{let t=jh();return t&&{...t,record:Wd()}},e_=()=>new Map(t_().flatMap(Th)),Qg=()=>JSON.stringify([[...e_().keys()],[...rd().keys()],Qd()?.run??null,Wd()??null,Oa()??null]);async function rT(t){let e=Oh();e.length&&await Gg(e);let[n,o]=[e_(),rd()],i=new Map([...o,...n]),s=[...o].every(([c,p])=>i.get(c)===p),l=s&&!Xg()?await aT(i,t):await ds(i,{bench:Qd(),stock:Oa()});l.bench!==void 0&&await Sn(),l.record!==void 0&&await io(),l.stock!==void 0&&await ro(),ad(l.unreadable),await lT(n,l);let d=Ph(o,s?l:await ds(o));d.length&&await Gg(d)}async function aT(t,e){let[n,o]=[Qg(),Date.now()],i=window.setInterval(()=>{(Qg()!==n||Date.now()-o>Xm+Yg)&&e.abort()},sT);try{return await tf(t,{bench:Qd(),stock:Oa()},e.signal)}finally{window.clearInterval(i)}}async function lT(t,{changed:e}){let n=Eo();for(let o of t_()){let i=t.get(o.file);i===void 0||!(o.file in e)||(n.has(o)?await uT(o,i):await td(o,i,sd,()=>{}))}}async function uT(t,e){let n=!1,o=()=>{n=!0,ld([t.file])};try{await td(t,e,sd,o)&&Cs()}finally{n&&ct()}}async function Gg(t){ld(t);try{await ed(),Cs(),zg(),f({measured:void 0}),je(),Fa(),await Promise.all([oo(),wi(!0)])}finally{ct()}}async function o_(t){let e=await _f();f({files:e});let n=gf(e,t.run);try{await La(n,n===t.run||!t.run?t.view:void 0)}catch(o){let i=o instanceof y?o.message:`The run opened last can no longer be read: ${String(o)}`;f({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function Yd(){try{let[t,e]=await Promise.all([af(),lf()]);f({fats:t,catalogue:e})}catch(t){if(!(t instanceof y))throw t;t.may_pass?window.setTimeout(()=>{Yd()},dT):f({fault:t.message})}}var dT=2e3,cT=()=>new Promise(t=>setTimeout(t,400)),Gd={};function On(t,e){return vt(),La(t,e)}async function La(t,e="weigh"){if(!t)return f({view:"runs"});let n=Gd={name:t},o=a.view;a.run.file&&Z(a.run)&&await sn();let i=await Pt(Mo,t);if(Gd!==n||(fi(i),da(),await Promise.race([Wh(),cT()]),a.run!==i))return;a.view===o&&Gd===n&&f({view:e}),localStorage.setItem("run",i.file),Z(i)&&(Xn(i),Vn());let s=_i().finally(je);await Promise.all([s,oo(),wi()]),Ca()}var n_=()=>(a.files?.studios??[]).some(t=>t.file==="studio.json");async function Ia(t){let e=vt(),n=a.run.now,o=n.losses??{},i={schema:"brimwright.run/2",id:crypto.randomUUID(),name:t.name,sell:t.sell,pour:{mould:t.mould,formula:t.formula}};t.slice&&(i.cut={bar:{thickness:t.slice},...n_()?{}:{kerf:""}}),n_()||(i.note=`Losses, scales and spoilage were taken over from "${String(n.name)}": check them.`,n.spoilage!==void 0&&(i.spoilage=n.spoilage),i.losses={pour:o.pour??{}},i.scales=n.scales??{},n.money&&!a.run.shipped&&(i.money=n.money));let{file:s}=await ye({kind:Mo,name:Ce(t.name,".run.json"),text:st(i)});e()&&(lt("set-up pour"),t.slice&&lt("set-up cut"),await On(s,"set-up"))}var pT="examples/plain_bars.run.json";function ne(t){Cs();let e=wn(a.view)?a.view:a.came_from;f({view:"formula",came_from:e,formula_of:t,picking:void 0,typed:void 0})}async function Ns(t){let e=vt(),n=["pour","pipe"].find(i=>a.run.file&&a.formulas[i]?.file===t);if(n)return ne(n);a.run.file||await La(pT,"reading");let o=await Pt(Bo,t);e()&&mT(o)}function mT(t){f({run_steps:{past:a.past,future:a.future},past:[],future:[]}),xn("apart",t),Z(t)&&Xn(t),f({plan:void 0,complaint:void 0}),ne("apart"),_i()}async function fT(){let t=a.formulas.apart!==void 0;return await Wa()?(f({view:t?"weigh":a.came_from,typed:void 0}),!0):!1}async function Wa(){return a.formulas.apart?await hT()?(_i(),!0):!1:!0}async function hT(){try{await rn()}catch(e){if(!(e instanceof y))throw e;return f({complaint:e.complaint}),!1}if(a.formulas.apart?.theirs)return F("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;xn("apart",void 0);let t={...a.dangers,apart:[]};return f({dangers:t,...a.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function i_(t){let e=a.view==="formula"&&a.formulas[a.formula_of]===t,n=a.formulas.apart===t;for(let o of["pour","pipe"])a.formulas[o]===t&&xn(o,void 0);n&&await Wa(),e&&f({view:n?"formulas":"set-up",typed:void 0})}async function Zd(t){let{file:e}=a.formulas.apart;await fT()&&X("run",`/${t}/formula`,e)}var gT=t=>({schema:"brimwright.formula/2",name:t,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),s_=t=>a_(gT(t));async function r_(t,e){let{$schema:n,...o}=JSON.parse((await Wt(t)).text);await a_({...o,name:e},t)}async function a_(t,e){let n=vt(),o=Ce(String(t.name),".formula.json"),{file:i}=await ye({kind:Bo,name:o,text:st(t),from:e});n()&&await Ns(i)}var _T=30,$T=2e3,l_=0,Xd=!1,tc=!1;function ec(t,e,n){let o=e==="mesh"?a.mesh:void 0;f({mould:{way:e,title:n,open:t,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),Ea()}var ln=()=>f({mould:void 0,mesh:void 0}),Di=(t,e,n)=>ec(Io(te,t),e,n);async function u_(t,e){let n=vt(),o=await Pt(te,t,e?crypto.randomUUID():t);if(!n())return!1;let i=String(o.now.name??t);return e&&v(o,{now:{...o.now,name:""}}),ec(o,"form",e?`A copy of ${i}`:`Change ${i}`),!0}async function d_({id:t,file:e,text:n}){let o=vt(),i=e?await Pt(te,e,t):Io(te,JSON.parse(n),t);return o()?(ec(i,"form",String(i.now.name??"").trim()||"A mould of your own"),!0):!1}var it=()=>a.mould,z=()=>it().open.now;function Rt(t,e){bi(it(),t),Ot(it().open,M(z(),t,e))}var c_=()=>pa(it()),p_=()=>ma(it()),bT=["name","note","owned","unmould_after"];function nc(t){let e=z(),n=Object.keys({...t,...e}).filter(l=>t?.[l]!==e[l]);(!t||n.some(l=>!bT.includes(l)))&&v(it(),{is_old:!0});let i=n.some(l=>it().complaint?.field===`/${l}`),s=n.some(l=>!["name","note"].includes(l));(it().is_old||i||s)&&Ea()}function Ea(){clearTimeout(l_),l_=window.setTimeout(()=>{wT()},_T)}async function wT(){if(Xd)return void(tc=!0);let{mould:t}=a;if(!t)return;let e=t.open.now;if(!(!Be(e,"shape")&&!Be(e,"mesh"))){if(bs(e).length)return v(t,{complaint:void 0});Xd=!0;try{let n=te.written(e),o={file:t.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await xi(o);t.open.now===e&&v(t,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof y))throw n;t.open.now===e&&t===a.mould&&oc(n),n.may_pass&&window.setTimeout(Ea,$T)}finally{Xd=!1,tc&&Ea(),tc=!1}}}function oc(t){let{field:e,problem:n,remedy:o,keep:i,entry:s}=t.complaint,l=e?`${n}; ${o}`:t.message;v(it(),{complaint:{field:ta(z(),e),line:l,keep:i&&{...i,at:ta(z(),i.at)},about:s===void 0?void 0:ta(z(),`${e}/${s}`)}})}var m_={};async function js(t){vt();let e=m_={name:t},n=a.view;if(a.order?.open.file!==t){a.order&&Z(a.order.open)&&await sn(a.order.open);let o=await Pt(Fo,t);if(m_!==e)return;let i=Z(o)?[o.saved??{}]:[];f({order:{open:o,past:i,future:[],times:""},typed:void 0}),Z(o)&&Vn(o)}a.view===n&&f({view:"order",typed:void 0}),Ca()}function f_(){f({order:void 0,...a.view==="order"?{view:"orders"}:{}})}async function h_(t){let e=vt(),n={schema:"brimwright.order/1",id:crypto.randomUUID(),for:t,lines:[]},o=Fo.new_name(Io(Fo,n)),{file:i}=await ye({kind:Fo,name:o,text:st(n)});e()&&await js(i)}var qt=()=>a.order,g_=()=>pa(qt()),__=()=>ma(qt());var Na=t=>Object.values(a.formulas).includes(t),Pi=t=>Object.values(a.beside).includes(t),$_=t=>`${String($(t,"/pour/formula"))}
${String($(t,"/pipe/formula"))}`;function yT(t,e){$(t,"/pour/mould")!==$(e,"/pour/mould")&&je(),$_(t)!==$_(e)&&oo(),ct(),Vn()}var vT=ct;function kT(t,e){for(let n of["pour","pipe"]){if(a.formulas[n]!==t)continue;let o=`/${n}/formula`,i=s=>String($(s,o)??"").endsWith(ue(e))?M(s,o,t.file):s;gd(a.run,i),i(a.run.now)!==a.run.now&&Ot(a.run,i(a.run.now))}}async function xT(t){t===a.run?(fi(),localStorage.removeItem("run"),f({view:"runs"})):t===a.mould?.open?ln():t===a.order?.open?f_():Pi(t)?fa(t):await i_(t),await ke(),a.run.file&&ct()}function b_(){Le("edited",({file:t,before:e})=>{Ch(),t===a.run?yT(e,t.now):Na(t)||Pi(t)?vT():t===a.mould?.open?nc(e):t===a.order?.open&&Vn(t)}),Le("gave_way",({file:t})=>{if(f({typed:void 0}),t===a.mould?.open)return nc();t!==a.order?.open&&(t===a.run&&(je(),oo().then(ct)),ct())}),Le("left_deleted",({file:t})=>{xT(t)}),Le("unwritten",({file:t})=>{t===a.run||t===a.order?.open?sn(t):(Na(t)||Pi(t))&&ct()}),Le("conflict",({file:t})=>{(Na(t)||Pi(t))&&f({is_old:!0})}),Le("renamed",({file:t})=>{Pi(t)&&a.held_open!==void 0&&f({held_open:t.file}),t===a.run&&(localStorage.setItem("run",t.file),je(),oo()),ct()}),Le("copied",({file:t,from:e})=>{Na(t)&&kT(t,e),Pi(t)&&ig(t,e),a.held_open===e&&f({held_open:t.file}),t===a.run&&(Nh(e),Rg(e),localStorage.setItem("run",t.file),wi().then(ct))})}var pe=r`<span aria-hidden="true">⚠</span> Danger`;function Hs(t,e="",n){let o=lo(t,n);return o.length?r`<div class="dangers" id=${e||u}>
    ${o.map(i=>r`<p class="danger"><strong>${pe}</strong> ${i}</p>`)}
  </div>`:u}function lo(t,e){let n=t==="pour"?"pipe":"pour";return a.dangers[t==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>t==="apart"||o.batter!==n).filter(o=>e===void 0||o.batch_pieces===void 0||o.batch_pieces===e).map(o=>o.text)}function w_(){let t=ae(a.view)||a.view==="order"||a.view==="trail"||vs()==="apart",e=a.dangers.run.map(({text:n})=>({from:t?`In the run "${String(a.run.now.name??a.run.file)}": `:"",text:n}));return[...a.dangers.apart.map(({text:n})=>({from:"",text:n})),...e]}var y_=()=>w_().length>0;function v_(){let t=w_(),e=ST(),n=e||ae(a.view)?"":ud();return!t.length&&!e&&!n?u:r`<section class="foremost" aria-label="Danger, and figures from before">
    ${t.length?r`<div role="alert" class="dangers">
            ${t.map(({from:o,text:i})=>r`<p class="danger"><strong>${pe}</strong> ${o}${i}</p>`)}
          </div>`:u}
    ${e?r`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${e}</p>
            ${TT()?r`<button type="button" @click=${RT}>To the question</button>`:u}
          </div>`:u}
    ${n?r`<div class="taken-in">
            <p>${n}</p>
            <button type="button" @click=${()=>f({taken_in:void 0})}>Close</button>
          </div>`:u}
  </section>`}var TT=()=>Tn(vs())!==void 0&&!ae(a.view);function RT(){let t=document.querySelector(".banner h2");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}),t.scrollIntoView({block:"start"}))}function ST(){if(!a.run.file||a.view==="reading")return"";let t=Tn(vs());if(t&&Wo(t))return`${t.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`;if(t)return`${t.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`;let e=a.changed_beside;return a.is_old&&e.length?`${jt(e)} ${e.length===1?"was":"were"} changed outside this page: what is struck through is not to be weighed.`:""}var Mn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},ja=t=>(...e)=>({_$litDirective$:t,values:e}),Oi=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,n,o){this._$Ct=e,this._$AM=n,this._$Ci=o}_$AS(e,n){return this.update(e,n)}update(e,n){return this.render(...n)}};var{I:AT}=Wf,k_=t=>t;var T_=t=>t.strings===void 0,x_=()=>document.createComment(""),Mi=(t,e,n)=>{let o=t._$AA.parentNode,i=e===void 0?t._$AB:e._$AA;if(n===void 0){let s=o.insertBefore(x_(),i),l=o.insertBefore(x_(),i);n=new AT(s,l,t,t.options)}else{let s=n._$AB.nextSibling,l=n._$AM,d=l!==t;if(d){let c;n._$AQ?.(t),n._$AM=t,n._$AP!==void 0&&(c=t._$AU)!==l._$AU&&n._$AP(c)}if(s!==i||d){let c=n._$AA;for(;c!==s;){let p=k_(c).nextSibling;k_(o).insertBefore(c,i),c=p}}}return n},uo=(t,e,n=t)=>(t._$AI(e,n),t),DT={},Ha=(t,e=DT)=>t._$AH=e,R_=t=>t._$AH,qa=t=>{t._$AR(),t._$AA.remove()};var A=ja(class extends Oi{constructor(t){if(super(t),t.type!==Mn.PROPERTY&&t.type!==Mn.ATTRIBUTE&&t.type!==Mn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!T_(t))throw Error("`live` bindings can only contain a single expression")}render(t){return t}update(t,[e]){if(e===Et||e===u)return e;let n=t.element,o=t.name;if(t.type===Mn.PROPERTY){if(e===n[o])return Et}else if(t.type===Mn.BOOLEAN_ATTRIBUTE){if(!!e===n.hasAttribute(o))return Et}else if(t.type===Mn.ATTRIBUTE&&n.getAttribute(o)===e+"")return Et;return Ha(t),e}});var Qt=t=>t.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function Fn(t,e){let n=Qt(e).split(/\s+/).filter(Boolean),o=i=>n.every(s=>Qt(i).includes(s));return o(`${t.name} ${t.id.replaceAll("_"," ")}`)?t.name:"own"in t?void 0:[...t.also_called,t.inci].find(o)}function Ua(t,e){let n=Qt(t).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!e.some(s=>s.id===i))return i}}var Fi=28.349523125,P_=25.4,PT=29.5735295625;function un(t,e){return t.toFixed(e).replace(/^-(0(\.0*)?)$/,"$1")}function R(t,e){return O_(un(t,e))}var O_=t=>t.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function oe(t){let e=[1,2,3].find(n=>Number(t.toFixed(n))!==0);return e!==void 0?`${un(t,e)} %`:ic(t)?"just below 0 %":"0.0 %"}var ic=t=>t<0||Object.is(t,-0),M_=t=>Math.abs(t-Math.round(t))<1e-6;function S_(t){return t?[0,1,2,3].find(e=>M_(t*10**e))??3:0}function A_(t){return Math.max(0,Math.ceil(-Math.log10(t)-1e-9))}function OT(t){return[0,1,2].find(e=>t.every(n=>M_(n*10**e)))??3}function Us(t,e,n){return t==="metric"?[e,""]:t==="us"?[n,""]:[e,n]}function ht(t,e){let n=s=>t[`${e}${s}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-OT([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var F_=.001;function qs(t,e,n,o,i=1e-9){let s=10**n;return un(o==="nearest"?t/e:Math.floor((t+i)/e*s)/s,n)}var D_=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function MT(t){if(!D_.some(e=>Math.abs(e*10-t)<1e-9||Math.abs(e-t)<1e-9))return D_.find(e=>Math.abs(e*Fi-t)<.6*F_)}function nt(t,e,n="nearest"){let o=e.scale_step_g||.1,i=MT(o),s=Math.min(.6*F_,o/2),l=i?qs(e.g,1,A_(o),n):qs(e.g,1,S_(o),n,s),d=i?qs(e.g,Fi,S_(i),n,s):qs(e.g,Fi,A_(o/Fi),n),[c,p]=[`${e.g_text??l} g`,`${e.oz_text??d} oz`];return(e.reads?e.reads==="oz":i!==void 0)&&t==="both"?[p,c]:Us(t,c,p)}var q=(t,e,n=1,o="nearest")=>nt(t,{g:e,scale_step_g:10**-n},o);function Te(t,{g:e=0,pieces:n}){if(n!==void 0)return`${n} ${n===1?"piece":"pieces"}`;let o=l=>O_(qs(e,l,3,"down")),i=16*Fi,s=e<1e3?`${o(1)} g`:`${o(1e3)} kg`;return P(Us(t,s,e<i?`${o(Fi)} oz`:`${o(i)} lb`))}function Ct(t,e,n=1){return Us(t,`${un(e,n)} ml`,`${un(e/PT,2)} US fl oz`)}function Mt(t,e){return Us(t,`${R(e,1)} mm`,FT(e))}function FT(t){let e=Math.round(Math.abs(t)/P_*32),n=t<0&&e?"-":"",o=e%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let s=Math.floor(e/32),l=o?`${o}/${i}`:"";return`${n}${[s||!o?String(s):"",l].filter(Boolean).join(" ")} in`}var sc=([t])=>t,P=([t,e])=>e?`${t} (${e})`:t;function B_(t,e){return Us(t,`${un(e,0)} \xB0C`,`${un(e*1.8+32,0)} \xB0F`)}function qe(t){let e=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(t??""));if(!e)return;let n=Number(e[1]??0)+Number(e[2].replace(",","."))/Number(e[3]??1),o={mm:1,cm:10,m:1e3}[e[4]]??P_;return n*o}function Re(t){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(t??""))?.[1]?.trim()??""}var kt=t=>/^\s*[+-]?\d[\d.,/\s]*$/.test(t);function U(t){let e=new Date(/^\d{4}-\d\d-\d\d$/.test(t)?`${t}T12:00`:t);return Number.isNaN(e.getTime())?t:e.toLocaleDateString("en-GB",{dateStyle:"medium"})}function St(t){return`${new Date(`${t}T12:00`).toLocaleDateString("en-GB",{weekday:"short"})} ${U(t)}`}var C_=t=>new Date(`${t}T12:00`).toLocaleDateString("en-GB",{day:"numeric",month:"short"}),At=t=>t.replaceAll(/\d{4}-\d\d-\d\d/g,U);function za(t){let e=Math.ceil(t),[n,o]=[Math.floor(e/60),e%60];return[n?`${n} h`:"",o||!n?`${o} min`:""].filter(Boolean).join(" ")}function co(t){let e=Math.round(t/60);return t>=60&&t%60===0&&e<90?`${e} min`:t<90?`${Math.round(t)} s`:e<90?`${e} min`:`${Math.floor(e/60)} h ${e%60} min`}function W_(t){let e=qe(t.round?.radius);if(e)return L_(e,S`<circle class="plain" r=${e} />`);let n=BT(t);if(!n)return u;let o=Math.max(...n.map(([i,s])=>Math.hypot(i,s)));return o>0?L_(o,S`<path class="plain" d=${`M${n.map(i=>i.join(" ")).join("L")}Z`} />`):u}var L_=(t,e)=>r`<svg class="tip" viewBox="${-1.1*t} ${-1.1*t} ${2.2*t} ${2.2*t}" aria-hidden="true">
    ${e}
  </svg>`;function BT({star:t,outline:e}){if(t&&typeof t=="object"&&!Array.isArray(t))return CT(t);if(!Array.isArray(e))return;let n=e.map(o=>[I_(o,"x"),-I_(o,"y")]);return n.some(([o,i])=>Number.isNaN(o)||Number.isNaN(i))?void 0:n}function I_(t,e){let n=String(t[e]??"").trim();return(n.startsWith("-")?-1:1)*(qe(n.replace(/^-/,""))??NaN)}function CT({points:t,outer_radius:e,inner_radius:n}){let[o,i]=[qe(e),qe(n)];if(!(!o||!i||typeof t!="number"||t<3||t>60))return Array.from({length:2*t},(s,l)=>{let d=Math.PI*l/t,c=l%2?i:o;return[c*Math.sin(d),-c*Math.cos(d)]})}var rc=!1;function E_(t){let{plan:e,explanation:n}=a,o=n?.of!==e;return o&&!rc&&IT(),{workings:LT(n?.workings,t),complaint:n?.complaint,is_old:o}}function LT(t,e){let n=t?.get(e);return n?[n]:[...t?.values()??[]].filter(({of:o})=>o.startsWith(`${e}.`))}async function IT(){let{plan:t,planned:e}=a;if(!(!t||!e)){rc=!0;try{let{how:n}=await ef(e);f({explanation:{of:t,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof y))throw n;f({explanation:{of:t,workings:new Map,complaint:n.message}})}finally{rc=!1}}}var N_=S`<path class="wall" d="M30 10l8 52h44l8-52" />`,ac={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:S`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${N_}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},margin:{name:"margin",words:"What is left of the price after cost and fees, as a share of the price without tax."},markup:{name:"markup",words:"What is put on the cost, as a share of the cost. A markup of 100 % is a margin of 50 %."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:S`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:S`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${N_}<path class="measure" d="M20 10h80" />`}};var lc=t=>`term ${t}`;function Bn(t){return r`<button
    type="button"
    class="ask-term"
    aria-expanded=${a.open.has(lc(t))?"true":"false"}
    aria-label="What ${ac[t].name} means"
    @click=${()=>Bt("open",lc(t))}
  >
    <span aria-hidden="true">?</span>
  </button>`}function Ue(t){if(!a.open.has(lc(t)))return u;let{name:e,words:n,drawing:o}=ac[t];return r`<span class="term-words" role="note"
    >${o?r`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${o}</svg>`:u}<span
      ><b>${e}</b>: ${n}</span
    ></span
  >`}var po=t=>r`<span class="term">${Bn(t)}${Ue(t)}</span>`;function L({key:t,label:e,shown:n,of:o,working:i,size:s="plain",note:l,term:d}){let c=a.open.has(t),p=`sum-${t.replaceAll(/[^\w]/g,"-")}`;return r`<div class="figure ${d?"explains":""}">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>Bt("open",t)}
    >
      <span class="name">${e}${l?r`<small>${l}</small>`:u}</span>
      <span class="value ${s==="weigh"?"large":""} ${a.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?r` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${d?r`${Bn(d)}${Ue(d)}`:u}
    ${c?r`<div class="sum" id=${p}>${i?Ja(i):uc(o)}</div>`:u}
  </div>`}var Vo=(t,e,n)=>L({key:t,label:e,shown:["",""],of:n});function uc(t){let{workings:e,complaint:n,is_old:o}=E_(t);return e.length?r`<div class=${o?"old":""}>${e.map(Ja)}</div>`:o?r`<p class="old" role="status">Asking how it is calculated ...</p>`:r`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function Ja({formula:t,with:e,sum:n,rounded:o,comes_to:i,sources:s}){let l=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return r`<p class="formula">${t}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${e.map(({name:d,value:c,from:p})=>r`<tr>
              <th scope="row">${d}</th>
              <td>${c}</td>
              <td>${p??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${l?r`<p class="comes-to">${l}${o?`, rounded ${o}`:""}</p>`:u}
    ${s.length?r`<p class="sources">From: ${s.join("; ")}.</p>`:u}`}var Qo,zs=[],Cn=()=>Qo!==void 0;function me(t,e,n,o){if(!Qo||Qo.some(s=>s.id===n))return;let i=zs.flatMap(({part:s})=>s??[]);Qo.push({of:t,at:e,id:n,label:o,part:i.at(-1)??"",folds:zs.flatMap(({fold:s})=>s??[])})}function Se(t,e){zs.push(t);try{return e()}finally{zs.pop()}}var j_=()=>{},H_=t=>{j_=t},Ka,WT=()=>[a.run.now,...Object.values(a.formulas).map(t=>t.now),...Object.values(a.beside).map(t=>t.now),a.formulas.apart,a.plan,a.fats,a.files];function Bi(){if(Cn())return[];let t=WT();return Ka?.of.length===t.length&&t.every((n,o)=>n===Ka.of[o])||(Ka={of:t,wanted:ET()}),Ka.wanted}function ET(){Qo=[],zs=[];try{return j_(),Qo}finally{Qo=void 0}}function q_(t){a.touched.has(t)||f({touched:new Set(a.touched).add(t)})}function U_(t,e){if(a.has_asked)return!1;let n=Bi().filter(o=>o.of===t&&(o.at===e||o.at.startsWith(`${e}/`)));return n.length>0&&n.every(o=>!a.touched.has(o.id))}var V=(t,e)=>`f-${t}${e.replaceAll(/[^\w]/g,"-")}`;function Va(t){if(t==="order")return a.order?.quoted?.complaint??a.order?.days?.complaint;let e=(n,o)=>o===a.plan?n?.complaint:void 0;return a.complaint??e(a.quoted,a.quoted?.of)??e(a.run_days,a.run_days?.of[0])}function Ut(t,e){let n=Va(t);if(!(!n||n.field!==e&&!n.field.startsWith(`${e}/`)))return Ae(t)&&!U_(t,n.field)?C(n):void 0}function xt(t,e){return Va(t)?.field===e?Ut(t,e):void 0}function Ae(t){let e=Va(t),n=to(t)?.file;return!e||n===void 0?!1:e.file===""||e.file===n||e.file.endsWith(`/${n}`)}function NT(t,e){let n=e.slice(0,e.lastIndexOf("/"));return Object.keys(g(t,n)??{}).length>1?e:n}function dn(){let t=Va();if(t)for(let e of["run",...mt,...yt])for(let n=t.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Ut(e,n)&&document.getElementById(V(e,n));if(o)return o}}function jT(t,e){let n=t.of??"run";if(t.optional&&e.trim()==="")return;if(t.number)return/^\s*\d+([.,]\d+)?\s*$/.test(e)?Number(e.trim().replace(",",".")):e;if(t.count)return/^\s*\d{1,9}\s*$/.test(e)?Number(e):e;let o=HT(t,n);return o&&kt(e)?`${e.trim()} ${o}`:e}function HT(t,e){return Re(g(e,t.at))||t.unit||""}var gt=(t,e,n)=>e||n?r`<p id="${t}-said" class=${e?"complaint":"hint"}>${e??n}</p>`:u,dc=!1;addEventListener("pointerdown",()=>dc=!0,!0);for(let t of["pointerup","pointercancel"])addEventListener(t,()=>dc=!1,!0);var qT=()=>f({typed:void 0});function Go(t){let{id:e}=t.target,n=()=>{qT(),q_(e)};dc?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var UT=t=>typeof t=="string"&&t.startsWith("?")?t.slice(1).trim():void 0,zT=({unit:t="",told:e=""},n)=>[t.replace("cm2","cm\xB2"),e,n?"required":""].filter(Boolean).join(", ")||u;function h(t){let e=t.of??"run",n=V(e,t.at),o=g(e,t.at),i=UT(o),s=a.typed?.key===n,l=s?a.typed.text:o===void 0||i!==void 0?"":String(o),d=i!==void 0||l.trim()===""&&(!t.optional||t.is_due===!0);d&&me(e,t.at,n,t.label);let c=Ut(e,t.at),p=b=>{let w=b.target.value;f({typed:{key:n,text:w}});let x=jT(t,w);X(e,x===void 0&&t.takes_part?NT(e,t.at):t.at,x)},_=(s&&typeof o=="string"&&o!==l?`taken as ${o}`:"")||t.hint||i;return r`<div
    class="field ${t.wide?"wide":""} ${t.short?"short":""} ${c?"wants":""}"
  >
    ${cc(r`<label for=${n} data-said=${zT(t,d)}>${t.label}</label>`,t.term)}
    <input
      id=${n}
      type=${t.date?"date":"text"}
      aria-required=${t.optional&&!t.is_due?u:"true"}
      .value=${A(l)}
      @input=${p}
      @blur=${Go}
      autocomplete="off"
      spellcheck="false"
      inputmode=${t.date?u:t.count?"numeric":t.number?"decimal":"text"}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${[c||_?`${n}-said`:"",t.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${gt(n,c,_)} ${t.term?Ue(t.term):u}
  </div>`}var cc=(t,e)=>e?r`<div class="labelled">${t}${Bn(e)}</div>`:t;function Gt(t){for(let e=t?.closest("details");e;e=e.parentElement?.closest("details"))e.open=!0;t?.focus()}var B=t=>()=>document.getElementById(t),ot=(t,e)=>B(V(t,e)),ze=t=>()=>document.querySelector(`#${t} :is(input, select, button[aria-pressed])`),JT=()=>document.activeElement;function I(t){requestAnimationFrame(()=>Gt(t()))}function fe(t,e,n,o=JT){F(e),ng(t,n),I(o)}function j(t,e,n,o,i){fe(t,e,s=>M(s,n,o),i)}var De=(t,e,n)=>`${V(t,e)}-${n}`;function E(t,e){let n=xt(t,e);return n?r`<p id=${V(t,e)} class="complaint" tabindex="-1">${n}</p>`:u}var z_=(t,e,n)=>e.map(([o,i])=>r`<button type="button" aria-pressed=${o===t?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function ut(t,e,n,o){return r`<div class="choice" role="group" aria-label=${t}>${z_(e,n,o)}</div>`}function T({of:t="run",question:e,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:s,answers:l,puts:d,then:c,hint:p,optional:m,term:_}){let b=i?De(t,n,e.replaceAll(/\W+/g,"-")):V(t,o),w=s===void 0&&!m;w&&me(t,o,b,e);let x=i?void 0:xt(t,o),Q=It=>{if(It===s)return;let To=l.find(([Sk])=>Sk===It)[1];j(t,`${e}: ${To}`,n,d(It),c&&ot(t,c(It)))};return r`<div class="field asked ${x?"wants":""}">
    ${cc(r`<p class="question" id="${b}-label" data-said=${w?"required":u}>${e}</p>`,_)}
    <div
      class="choice"
      role="group"
      id=${b}
      tabindex="-1"
      aria-labelledby="${b}-label"
      aria-describedby=${x||p?`${b}-said`:u}
    >
      ${z_(s,l,Q)}
    </div>
    ${gt(b,x,p)} ${_?Ue(_):u}
  </div>`}function pc(t,e,n,o){let i=V("run",t),s=xt("run",t),l=()=>j("run",`${e}: ${n?"no":"yes"}`,t,n?void 0:o);return r`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${s?`${i}-said`:u}
        @click=${l}
      >
        ${e}
      </button>
    </div>
    ${gt(i,s)}`}function $t({label:t,of:e="run",at:n,answers:o,unsaid:i,optional:s,chosen:l,take:d}){let c=V(e,n),p=Ut(e,n),m=l??D(e,n);!m&&!s&&me(e,n,c,t);let _=!m||o.some(([x])=>x===m),b=[["",i],..._?[]:[[m,m]],...o];return r`<div class="field choose ${p?"wants":""}">
    <label for=${c} data-said=${m||s?u:"required"}>${t}</label>
    <select
      id=${c}
      aria-required=${s?u:"true"}
      @change=${x=>{let Q=x.target.value;d?d(Q):X(e,n,Q||!s?Q:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${c}-said`:u}
    >
      ${b.filter(([x])=>x||s||!m).map(([x,Q])=>r`<option value=${x} .selected=${A(x===m)}>${Q}</option>`)}</select
    >${gt(c,p)}
  </div>`}function Ci(t,e,n=[]){let o=ee(D("run",e),n);return $t({label:t,at:e,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function Yt({of:t="run",at:e,name:n,title:o,add:i,blank:s,body:l}){let d=De(t,e,"part"),c=De(t,e,"add"),p=()=>Se({part:o},l);return g(t,e)===void 0?r`<p class="choice">
      <button type="button" id=${c} @click=${()=>j(t,`${o} added`,e,s,ze(d))}>
        ${i}
      </button>
    </p>`:r`<div class="part" id=${d} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>j(t,`${o} removed`,e,void 0,B(c))}
      >
        Remove
      </button>
    </div>
    ${E(t,e)} ${p()}
  </div>`}var J_=(t,e)=>`folded ${t} ${e}`,zt=(t,e)=>lt(J_(t,e));function O({of:t="run",name:e,pointers:n,summary:o,is_needed:i,body:s}){let l=J_(t,e);if(Cn())return r`${Se({fold:l},s)}`;(i||n.some(p=>Ut(t,p)))&&lt(l);let d=a.open.has(l);return r`<details .open=${d}>
    <summary @click=${p=>{p.preventDefault(),Bt("open",l)}}>${o}</summary>
    ${d?r`<div class="folded">${s()}</div>`:u}
  </details>`}var k=({of:t="run",at:e})=>tt(t,e),W=({of:t="run",at:e},n)=>De(t,`${e}/${n}`,"item"),Qa=({of:t="run",at:e},n,o)=>De(t,`${e}/${n}`,o),KT=({of:t="run",at:e})=>V(t,e);function Js(t,e,n,o){let{of:i="run",at:s,stays:l,and:d=c=>c}=t;fe(i,e,c=>d(M(c,s,n.length||l?n:void 0),n.length),o)}function H(t,e,n){let o=k(t);Js(t,`${n} added`,[...o,e],ze(W(t,o.length)))}function VT(t,e,n){let o=k(t).filter((l,d)=>d!==e),i=Math.min(e,o.length-1),s=o.length>(t.least??0);Js(t,`${n} removed`,o,s?B(Qa(t,i,"drop")):ot(t.of??"run",t.at))}function QT(t,e,n,o){let i=[...k(t)],[s]=i.splice(e,1);i.splice(e+n,0,s);let l=n<0?"earlier":"later",c=e+n===0||e+n===i.length-1?n<0?"later":"earlier":l;Js(t,`${o} moved ${l}`,i,B(Qa(t,e+n,c)))}function J(t,e,n){let o=k(t).length-1,i=o>=(t.least??0),s=t.in_order&&o>0;if(!i&&!s)return u;let l=(d,c,p)=>r`<button
      type="button"
      id=${Qa(t,e,c)}
      ?disabled=${p}
      aria-label="${n} ${c}"
      @click=${()=>QT(t,e,d,n)}
    >
      ${d<0?"\u2191":"\u2193"}
    </button>`;return r`<div class="tools">
    ${s?r`${l(-1,"earlier",e===0)} ${l(1,"later",e===o)}`:u}
    ${i?r`<button
            type="button"
            id=${Qa(t,e,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>VT(t,e,n)}
          >
            ×
          </button>`:u}
  </div>`}function Y(t,e,n){let o=KT(t),i=xt(t.of??"run",t.at);return r`${gt(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${e}
    </button>`}var rt=()=>a.beside.studio!==void 0,Ks=({run:t})=>g("run",t),mc=({studio:t})=>g("studio",t);function Vs(t){return Ks(t)===void 0&&rt()?{of:"studio",at:t.studio}:{of:"run",at:t.run}}var cn=t=>Ks(t)??mc(t),Lt=(t,e)=>h({...e,...Vs(t)}),fc=t=>t===void 0||t===""||t!==null&&typeof t=="object"&&!Object.keys(t).length;function Qs(t,e=""){return t===void 0||fc(t)?[]:t===null||typeof t!="object"||Array.isArray(t)?[[e,t]]:Object.entries(t).flatMap(([n,o])=>Qs(o,`${e}/${N(n)}`))}function Ln(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/")))$(t,n)!==void 0&&fc($(t,n))&&(t=M(t,n,void 0));return t}var Li=(t,e)=>e.reduce((n,o)=>Ln(M(n,o,void 0),o),t);function V_(t){let e=new Map;return t.flatMap(n=>Qs(Ks(n)).flatMap(([o,i])=>{let s=n.studio+o,l=e.get(s)??g("studio",s);return fc(l)||String(l).startsWith("?")||l===i?(e.set(s,i),[[n.run+o,s,i]]):[]}))}async function hc(t){rt()||await ha();let e=V_(t);Ne([["studio",n=>e.reduce((o,[,i,s])=>M(o,i,s),n)],["run",n=>Li(n,e.map(([o])=>o))]]),F("Kept in the studio")}function GT(t){let e=t.flatMap(o=>Qs(mc(o)).map(([i,s])=>[o.run+i,s]));Ne([["run",o=>e.reduce((i,[s,l])=>$(i,s)===void 0?M(i,s,l):i,o)]]),F("Said in this run only")}function YT(t){let e=t.flatMap(n=>Qs(Ks(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));Ne([["run",n=>Li(n,e)]]),F("Taken from the studio again")}var K_=t=>Qs(t).length>0;function mo(t,e){if(!rt())return u;let n=e.some(s=>K_(Ks(s))),o=e.some(s=>K_(mc(s))),i=(s,l)=>r`<button type="button" aria-label="${t}: ${s}" @click=${l}>${s}</button>`;return r`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&V_(e).length?i("Keep in my studio",()=>{hc(e)}):u}
    ${n&&o?i("As in the studio",()=>YT(e)):u}
    ${!n&&o?i("Otherwise in this run",()=>GT(e)):u}
  </span>`}function gc(t){let e=Object.keys(g("studio","/moulds_owned")??{}),n=a.files?.moulds;return e.find(o=>ee(o,n)===ee(t,n))??t}var pt=(t,e)=>Object.keys(g(t,e)??{}),Q_=(t,e)=>`${V(t,e)}-name`;function Ii({of:t,at:e,label:n,add:o,blank:i,then:s}){let l=Q_(t,e),d=()=>{let c=document.getElementById(l),p=c.value.trim();if(!p)return c.focus();if(c.value="",pt(t,e).includes(p))return Gt(s(p)());j(t,`${p} added`,`${e}/${N(p)}`,i,s(p))};return r`<div class="row">
    <div class="field">
      <label for=${l}>${n}</label>
      <input
        id=${l}
        autocomplete="off"
        spellcheck="false"
        @keydown=${c=>{c.key==="Enter"&&d()}}
      />
    </div>
    <button type="button" @click=${d}>${o}</button>
  </div>`}function Gs({of:t,at:e,name:n,label:o,also:i=l=>l,put:s}){let l=`${V(t,e)}-${pt(t,e).indexOf(n)}-called`;return $c({id:l,name:n,label:o,taken:pt(t,e),take:d=>{let c=p=>i(Ys(p,e,n,d),d);s?s(c,d):fe(t,`${n} is called ${d}`,c)}})}var _c;function $c({id:t,name:e,label:n,taken:o,take:i,hint:s}){let l=c=>{let p=c.target.value.trim(),m=p!==e&&o.includes(p);_c=m?{id:t,words:`Another is called ${p} already`}:void 0,f({typed:void 0}),!(!p||m||p===e)&&(i(p),F(`${e} is called ${p}`),I(B(t)))},d=_c?.id===t?_c.words:void 0;return r`<div class="field ${d?"wants":""}">
    <label for=${t}>${n}</label>
    <input
      id=${t}
      .value=${A(a.typed?.key===t?a.typed.text:e)}
      @input=${c=>f({typed:{key:t,text:c.target.value}})}
      @change=${l}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${d?"true":"false"}
      aria-describedby=${d||s?`${t}-said`:u}
    />
    ${gt(t,d,s)}
  </div>`}function Ys(t,e,n,o){let i=Object.entries($(t,e)??{}).map(([s,l])=>[s===n?o:s,l]);return M(t,e,Object.fromEntries(i))}function Yo(t,e,n,o=n){let i=s=>Ln(M(s,`${e}/${N(n)}`,void 0),e);return r`<div class="tools">
    <button
      type="button"
      aria-label="Remove ${o}"
      @click=${()=>fe(t,`${o} removed`,i,B(Q_(t,e)))}
    >
      ×
    </button>
  </div>`}var Zo="/pipe/beads",Ke=`${Zo}/tip`,ZT={of:"run",at:Ke},pn={at:`${Zo}/moves`,in_order:!0},bc="\0own",X_={tip:"",bead_to_opening:"",moves:[]},Je=(t,e)=>({name:t,label:e,kind:"length"}),G_={name:"count",label:"How many",kind:"count"},Y_=Je("circle_radius","Radius of their circle"),wc={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[Je("diameter","Diameter"),Je("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[Je("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},Je("start_radius","Radius at the start"),Je("end_radius","Radius at the end"),Je("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[Je("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[G_,Y_,Je("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[G_,Y_,Je("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[Je("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function t$(t){return r`${tR()} ${yc()?Ya(ZT):sR()}
    ${h({label:"Bead \xF7 tip opening",at:`${Zo}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${k(pn).map((e,n)=>pR(e,n,t))}</div>
    ${hR()}`}var yc=()=>typeof g("run",Ke)=="object",vc=()=>String(g("run",`${Zo}/own_tips`)??g("studio","/own_tips")??"");function XT(){let t=vc(),e=t?Vd(t):[];return g("run",`${Zo}/own_tips`)===void 0?[...e,...Ws()]:e}function tR(){let t=n=>n===bc?j("run","a tip of your own",Ke,{name:"",round:{radius:""}},nR):X("run",Ke,n),e=XT().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return r`${$t({label:"Tip",at:Ke,answers:[...e,[bc,"My own, measured"]],unsaid:"Which tip?",take:t,chosen:yc()?bc:void 0})}
  ${yc()?u:O({name:"tips",pointers:[`${Zo}/own_tips`],summary:"Tips of a file of your own",body:()=>h({label:"File of tips",at:`${Zo}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var eR=De("run",Ke,"own"),nR=ze(eR);async function oR(){let t=g("run",Ke);if(!await yd())return;let e=tt("own_tips","/tips"),n=iR(String(t.name).trim()||"My tip",e);Ne([["own_tips",o=>M(o,`/tips/${e.length}`,{...t,name:n})],["run",o=>M(o,Ke,n)]]),F(`${n} kept in ${a.beside.own_tips.file}`)}function iR(t,e){for(let n=1;;++n){let o=n===1?t:`${t} ${n}`;if(![...e,...Ws()].some(i=>i.name===o))return o}}function sR(){let t=D("run",Ke),e=vc();if(!t||!e||!Vd(e).some(o=>o.name===t))return u;let n=tt("own_tips","/tips").findIndex(o=>o.name===t);return n<0?r`<button type="button" @click=${()=>{yd()}}>Change this tip of my own</button>`:Ya({of:"own_tips",at:`/tips/${n}`})}var Z_=[["round","Round"],["star","Star"],["outline","Another outline"]],Ga={x:"",y:""},rR={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[Ga,Ga,Ga]};function Ya({of:t,at:e}){let n=Z_.map(([s])=>s),o=n.find(s=>g(t,`${e}/${s}`)!==void 0),i=s=>({...ft(t,e,n),[s]:rR[s]});return r`<div class="part" id=${De(t,e,"own")} role="group" aria-label="My own tip">
    ${E(t,e)} ${aR({of:t,at:e})}
    ${T({of:t,question:"Opening of the tip",at:e,is_told_elsewhere:!0,chosen:o,answers:Z_,puts:i})}
    ${o?dR({of:t,at:e},o):u}
    ${O({of:t,name:t==="run"?"hand":`hand ${e}`,pointers:[`${e}/hand`,`${e}/note`],summary:"Correction for your hand",body:()=>uR({of:t,at:e})})}
    ${t==="run"?r`<button type="button" @click=${()=>{oR()}}>Keep this tip for all my runs</button>`:r`<p class="hint">It stands in ${a.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var aR=({of:t,at:e})=>t==="run"?h({label:"What you call the tip",at:`${e}/name`}):$c({id:V(t,`${e}/name`),name:D(t,`${e}/name`),label:"What you call the tip",taken:tt("own_tips","/tips").map(({name:n})=>String(n)),take:n=>lR(e,n),hint:"The run that lies open and the studio follow; other runs that name it choose it anew."});function lR(t,e){let n=D("own_tips",`${t}/name`),o="/hand",i=Ee(vc())===a.beside.own_tips?.file,s=i&&g("run",Ke)===n,l=i&&g("studio",`${o}/${N(n)}`)!==void 0;Ne([["own_tips",d=>M(d,`${t}/name`,e)],...s?[["run",d=>M(d,Ke,e)]]:[],...l?[["studio",d=>Ys(d,o,n,e)]]:[]])}function uR({of:t,at:e}){let n=`${e}/hand`,o=i=>g(t,i)!==void 0;return r`<div class="row">
      ${h({of:t,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?h({of:t,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${o(n)?r`<button
            type="button"
            @click=${()=>j(t,"correction removed",n,void 0,ze(De(t,e,"own")))}
          >
            Leave the correction out
          </button>`:u}
    ${h({of:t,label:"Note on the tip",at:`${e}/note`,optional:!0})}`}function dR(t,e){if(e==="outline")return cR(t);let{of:n,at:o}=t,i=(s,l)=>h({of:n,label:l,at:`${o}/${e}/${s}`,unit:"mm",short:!0});return r`<div class="row">
    ${e==="round"?i("radius","Radius of the opening"):r`${h({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function cR({of:t,at:e}){let n={of:t,at:`${e}/outline`};return r`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${k(n).map((o,i)=>r`<div class="row" id=${W(n,i)}>
          ${h({of:t,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${h({of:t,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${J(n,i,`corner ${i+1}`)}
        </div>`)}
    ${Y(n,"One more corner",()=>H(n,Ga,"corner"))}`}function pR(t,e,n){let o=wc[String(t.move)],i=`${pn.at}/${e}`,s=`${e+1}. ${o?.words??String(t.move)}`;return r`<div class="part" id=${W(pn,e)} role="group" aria-label=${s}>
    <div class="part-head">
      <p class="part-title">${s}</p>
      ${J(pn,e,s)}
    </div>
    ${E("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(l=>mR(i,l))}
      ${h({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${fR(e,n)}
  </div>`}function mR(t,{name:e,label:n,kind:o,optional:i}){let s=o==="signed"?"\u221212 mm is to the other side.":void 0,l=o==="length"||o==="signed"?"mm":void 0;return h({label:n,at:`${t}/${e}`,unit:l,hint:s,optional:i,short:!0,count:o==="count",number:o==="number"})}function fR(t,e){let n=e?.visible_by?.moves??[],o=n[t];if(!o||n.length!==k(pn).length)return u;let i=o.length_mm>0?`${R(o.length_mm/10,1)} cm of bead`:"";return L({key:`pipe.move.${t}`,label:"Lays down",note:i,shown:Ct(a.units,o.volume_ml),of:`pipe.visible_by.moves.${t}.volume_ml`})}function hR(){let t=o=>({move:o,...Object.fromEntries(wc[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),e=V("run",pn.at),n=xt("run",pn.at);return k(pn).length||me("run",pn.at,e,"What the tip does"),r`${gt(e,n)}
    <div
      class="choice words"
      role="group"
      id=${e}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${e}-said`:u}
    >
      ${Object.entries(wc).map(([o,{words:i,does:s}])=>r`<button type="button" @click=${()=>H(pn,t(o),i)}>
            <b>+ ${i}</b> <small>${s}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}function mn(t,e=()=>{}){if(!t.theirs)return u;let n=Wo(t),o=`conflict-${t.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{bh(t),e()};return r`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${t.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${t.failed?r`<p class="complaint" role="status">Not loaded: ${t.failed}.</p>`:u}
    <div class="choice">
      ${n?r`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>wh(t)}>Leave it deleted</button>`:r`<button type="button" @click=${()=>$h(t)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function fn(t){if(t.theirs||!t.set_aside||$i(t)&&!t.is_taken)return u;let e=()=>{$i(t)&&qo(),yh(t)};return r`<section class="banner quiet" aria-label="${t.file} was changed">
    <p>
      ${t.file} was changed outside this page, and stands here as it is
      now.${t.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${e}>Change to the other text</button>
      ${t.is_taken?r`<button type="button" @click=${()=>gh(t)}>Close</button>`:u}
    </div>
  </section>`}var Za={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function n$(t,e){let n=Ls(t);if(!Array.isArray(n)||!n.some(d=>d.id===e))return u;let i=tt("own_fats","/fats").findIndex(d=>d.id===e);if(!(i>=0&&a.beside.own_fats!==void 0))return r`<button type="button" @click=${()=>{gR(t,e)}}>Change this fat of my own</button>`;let l=`/fats/${i}`;return O({of:"own_fats",name:e,pointers:[l],summary:`My own fat, in ${a.beside.own_fats.file}`,body:()=>Se({part:D("own_fats",`${l}/name`)||"Your own fat"},()=>kc(l))})}async function gR(t,e){await ga(t),zt("own_fats",e);let n=tt("own_fats","/fats").findIndex(o=>o.id===e);I(B(`f-own_fats-fats-${n}-name`))}var _R=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function kc(t){let e=(n,o,i,s=!1)=>h({of:"own_fats",label:o,at:`${t}/${n}`,hint:i,optional:s});return r`${E("own_fats",t)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${e("name","Name of the fat")} ${e("source","The document","Supplier, name, date.")}
      ${e("lot","Lot",void 0,!0)}
    </div>
    ${T({of:"own_fats",question:"What it is",at:`${t}/kind`,chosen:D("own_fats",`${t}/kind`)||void 0,answers:_R,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${$R(`${t}/saponification_value`)}
    <div class="row">
      ${e("inci","INCI name")}
      ${e("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${e("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${O({of:"own_fats",name:`${t} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${t}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>bR(t)})}`}function $R(t){let e=g("own_fats",t),n=e!==null&&typeof e=="object"?"range":"one",o=(i,s,l=!1)=>h({of:"own_fats",label:s,at:i,number:!0,short:!0,optional:l,unit:"mg KOH/g"});return r`${T({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:t,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(t,"Saponification value"):r`${o(`${t}/low`,"Lowest")} ${o(`${t}/typical`,"Typical",!0)}
            ${o(`${t}/high`,"Highest")}`}
    </div>`}function bR(t){let e=(o,i,s,l)=>{let d=`${t}/${o}`,c=g("own_fats",d)!==void 0,p=()=>j("own_fats",`${i}: ${c?"left out":"added"}`,d,c?void 0:s);return r`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${c?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${c?"Leave out":"Add"}
        </button>
      </div>
      ${c?r`${E("own_fats",d)}${l()}`:u}
    </div>`},n=(o,i,s,l=!1)=>h({of:"own_fats",label:i,at:`${t}/${o}`,unit:s,number:l,short:!0});return r`<div class="items">
      ${e("iodine_value","Iodine value",{low:"",high:""},()=>typeof g("own_fats",`${t}/iodine_value`)=="object"?r`<div class="row">
              ${n("iodine_value/low","Lowest iodine value","g/100 g",!0)}
              ${n("iodine_value/high","Highest iodine value","g/100 g",!0)}
            </div>`:n("iodine_value","Iodine value","g/100 g",!0))}
      ${e("density","Density when molten",{at:"",low:"",high:""},()=>r`<div class="row">
            ${n("density/at","Measured at","\xB0C")} ${n("density/low","Lowest density","g/ml")}
            ${n("density/high","Highest density","g/ml")}
          </div>`)}
      ${e("melting_range","Melting range",{low:"",high:""},()=>r`<div class="row">
            ${n("melting_range/low","Melts from","\xB0C")} ${n("melting_range/high","Melts up to","\xB0C")}
          </div>`)}
    </div>
    ${wR(`${t}/fatty_acids`)}
    <div class="row">
      ${h({of:"own_fats",label:"Unsaponifiable, at most",at:`${t}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${h({of:"own_fats",label:"Note on the fat",at:`${t}/note`,optional:!0})}
    </div>`}var e$=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function wR(t){let e=Object.keys(g("own_fats",t)??{}),n=e$.filter(([l])=>!e.includes(l)),o=l=>e$.find(([d])=>d===l)?.[1]??l,i=l=>`${t}/${N(l)}`,s=l=>{let d=Array.isArray(g("own_fats",i(l))),c=(p,m)=>h({of:"own_fats",label:`${o(l)}, ${m}`,at:`${i(l)}/${p}`,unit:"%",short:!0});return r`<div class="row">
      ${d?r`${c(0,"lowest")} ${c(1,"highest")}`:h({of:"own_fats",label:o(l),at:i(l),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(l)}"
        @click=${()=>j("own_fats",`${o(l)} removed`,e.length>1?i(l):t,void 0)}
      >
        ×
      </button>
    </div>`};return r`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${E("own_fats",t)} ${e.map(s)}
    <div class="row">
      ${$t({label:"Add a fatty acid",of:"own_fats",at:`${t}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:l=>l&&j("own_fats",`${o(l)} added`,i(l),["",""])})}
    </div>`}function Wi(t){let{pieces:e,batches:n,batch_limits:o,around:i,...s}=t,[l]=n,{pour:d,pipe:c,dust:p,lye_pot:m,bottles:_}=l;return{...s,pour:d,pipe:c,dust:p,lye_pot:m,bottles:_,batch:l,place:"batches.0",whippings:c?.whippings??[],whole:t}}var K=(t,e,n=`${e}s`)=>`${t} ${t===1?e:n}`,yR=t=>t.cut?["loaf","loaves"]:["cast","casts"];function Ve(t,{pieces:e,casts:n}){let o=t.cut?K(e,"bar"):K(e,"piece");return n===e?o:`${o} from ${K(n,...yR(t))}`}var vR=t=>t===1?"once":`${t} times`,xc=t=>t.batches.length>1,Jt=t=>t.pieces.batches>1;function _t(t){return Jt(t.whole)?`one batch, ${Ve(t.whole,t.batch)}`:""}var o$=({whippings:t})=>t.length>1||(t[0]?.count??0)>1;function Tc(t,e){return o$(t)?`${Ve(t.whole,e)}${e.count>1?`, whipped ${vR(e.count)}`:""}`:""}function Xa(t,e){let n=Tc(t,e);return n&&`one whipping: ${n}`}var i$=t=>Jt(t.whole)||o$(t),tl=(t,e)=>`${K(t,"filling")} of ${K(e,"cavity","cavities")}`;var s$=t=>[...a.files?.runs??[],...a.files?.orders??[],...a.files?.formulas??[]].find(e=>e.file===t)?.name||t;function el(t){let e=t?.used_by??[];return e.length?r`<p class="aside">Used by ${jt(e.map(s$))}.</p>`:u}function Ei(t){let e=t?.used_by??[];return e.length<2?u:r`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${jt(e.map(s$))}: a change here changes
    ${e.length===2?"both":`all ${e.length}`}.
  </p>`}var Zs={of:"own_fats",at:"/fats",least:1},nl={of:"own_tips",at:"/tips",least:1},Xo=({of:t,at:e})=>tt(t,e);function r$(t){return l$(t,Zs,"fats",e=>{let n=`/fats/${e}`;return O({of:"own_fats",name:String(Xo(Zs)[e].id),pointers:[n],summary:r`<span
        >${D("own_fats",`${n}/name`)||"Without a name"}<small
          >${kR(`${n}/saponification_value`)}</small
        ></span
      >`,body:()=>kc(n)})})}function kR(t){let e=g("own_fats",t),n=e!==null&&typeof e=="object"&&!Array.isArray(e)?e:void 0,o=n?[n.low,n.high].filter(i=>i!=="").join(" to "):String(e??"");return o?`${o} mg KOH/g`:"saponification value not given"}function a$(t){return l$(t,nl,"tips",e=>{let n=`/tips/${e}`;return r`<div class="tip-row">
      ${W_(Xo(nl)[e])}
      ${O({of:"own_tips",name:`tip ${e}`,pointers:[n],summary:D("own_tips",`${n}/name`)||"Without a name",body:()=>Ya({of:"own_tips",at:n})})}
    </div>`})}function l$(t,e,n,o){let i=a.files?.[n].find(({file:l})=>l===t.file),s=l=>String(Xo(e)[l].name||`number ${l+1}`);return r`${mn(t)} ${fn(t)}
    <section class="card" aria-labelledby="held-title">
      <h2 id="held-title" tabindex="-1">In ${t.file}</h2>
      ${Ei(i)}
      ${t.shipped?r`<p class="aside">Built-in: your first change is saved as a copy.</p>`:u}
      <div class="items">
        ${Xo(e).map((l,d)=>r`<div class="held" id=${W(e,d)} role="group" aria-label=${s(d)}>
              ${o(d)} ${J(e,d,s(d))}
            </div>`)}
      </div>
    </section>`}var Rc=(t,e)=>({...Za,id:Ua(t,e),name:t});function u$(t){let e=Rc(t,[...a.fats,...Xo(Zs)]);H(Zs,e,t),zt("own_fats",String(e.id)),I(ot("own_fats",`/fats/${Xo(Zs).length-1}/source`))}var Sc=t=>({name:t});function d$(t){H(nl,Sc(t),t);let e=Xo(nl).length-1;zt("own_tips",`tip ${e}`),I(ze(De("own_tips",`/tips/${e}`,"own")))}var c$=(t,e,n)=>{let o=new Map;for(let i=e;i<=n;i++)o.set(t[i],i);return o},ol=ja(class extends Oi{constructor(t){if(super(t),t.type!==Mn.CHILD)throw Error("repeat() can only be used in text expressions")}dt(t,e,n){let o;n===void 0?n=e:e!==void 0&&(o=e);let i=[],s=[],l=0;for(let d of t)i[l]=o?o(d,l):l,s[l]=n(d,l),l++;return{values:s,keys:i}}render(t,e,n){return this.dt(t,e,n).values}update(t,[e,n,o]){let i=R_(t),{values:s,keys:l}=this.dt(e,n,o);if(!Array.isArray(i))return this.ut=l,s;let d=this.ut??=[],c=[],p,m,_=0,b=i.length-1,w=0,x=s.length-1;for(;_<=b&&w<=x;)if(i[_]===null)_++;else if(i[b]===null)b--;else if(d[_]===l[w])c[w]=uo(i[_],s[w]),_++,w++;else if(d[b]===l[x])c[x]=uo(i[b],s[x]),b--,x--;else if(d[_]===l[x])c[x]=uo(i[_],s[x]),Mi(t,c[x+1],i[_]),_++,x--;else if(d[b]===l[w])c[w]=uo(i[b],s[w]),Mi(t,i[_],i[b]),b--,w++;else if(p===void 0&&(p=c$(l,w,x),m=c$(d,_,b)),p.has(d[_]))if(p.has(d[b])){let Q=m.get(l[w]),It=Q!==void 0?i[Q]:null;if(It===null){let To=Mi(t,i[_]);uo(To,s[w]),c[w]=To}else c[w]=uo(It,s[w]),Mi(t,i[_],It),i[Q]=null;w++}else qa(i[b]),b--;else qa(i[_]),_++;for(;w<=x;){let Q=Mi(t,c[x+1]);uo(Q,s[w]),c[w++]=Q}for(;_<=b;){let Q=i[_++];Q!==null&&qa(Q)}return this.ut=l,Ha(t,c),Et}});async function dt(t){f({list_complaint:""});try{await t()}catch(e){f({list_complaint:e instanceof Error?e.message:String(e)}),e instanceof y&&await ke().catch(()=>{})}}var Ac=()=>{dt(rg)},p$=()=>{dt(ag)};function Pe(t){return r`<h1 tabindex="-1">${t}</h1>
    ${a.list_complaint?r`<p class="alarm" role="alert">${a.list_complaint}</p>`:u}
    ${a.list_told&&Ps()?r`<p class="told" role="status">
            ${a.list_told} <button type="button" @click=${Ac}>Undo</button>
          </p>`:u}
    ${(a.files?.cut??[]).map(e=>r`<p class="alarm">
          More lies in ${e.folder} than is looked at: ${e.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var m$=new Map,f$=Promise.resolve();function h$(t,e=""){let n=`${t}
${e}`,o=m$.get(n);return o||(o=f$.then(()=>xR(t)),f$=o,m$.set(n,o)),o}async function xR(t){try{let e=await tn({kind:"glb",gauge:{file:t}}),n=ki(await e.arrayBuffer());return Ms(n.find(o=>o.name==="cavity")??n[0])}catch(e){if(e instanceof y)return;throw e}}var Dc=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#t=new IntersectionObserver(([e])=>e.isIntersecting&&this.#e(),{rootMargin:"200px"});connectedCallback(){this.#t.observe(this)}disconnectedCallback(){this.#t.disconnect()}attributeChangedCallback(){this.#t.disconnect(),this.isConnected&&this.#t.observe(this)}#e(){this.#t.disconnect();let e=this.getAttribute("file")??"";requestIdleCallback(()=>{h$(e,this.getAttribute("changed")??"").then(n=>{e===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let e=this.#n;if(!e)return void we(u,this);let{left:n,right:o,floor:i,brim:s,loops:l}=e,d=.04*Math.max(o-n,s-i),c=[n-d,-s-d,o-n+2*d,s-i+2*d];we(r`<svg viewBox=${c.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${Os(l)} />
      </svg>`,this)}};customElements.define("mould-picture",Dc);var Qe=(t,e)=>r`<ul class="cards">
    ${ol(t,({file:n})=>n,e)}
  </ul>`;function hn(t){let{one:e,facts:n,picture:o,open:i}=t,s=a.list_open?.file===e.file?a.list_open:void 0,l=e.name||e.file;return r`<li class="file">
    <button type="button" class="open" @click=${()=>{dt(i)}}>
      ${o?r`<mould-picture file=${o}></mould-picture>`:u}
      <span class="told-of"
        ><b>${l}</b>${n.length?r`<span>${n.join(", ")}</span>`:u}
        <span class="file-name">${e.shipped?"built-in":e.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${s?"true":"false"}
      aria-label="Name, note, copy or remove: ${l}"
      @click=${()=>TR(t,!s)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${s?RR(t,s):u}
  </li>`}function TR({one:t},e){let{file:n,name:o,note:i}=t;f({list_open:e?{file:n,name:o,note:i,stem:vi(n)}:void 0})}function RR(t,e){let{kind:n,one:o}=t,i=r`<button type="button" @click=${()=>{dt(()=>AR(n,o))}}>Copy</button>`;if(o.shipped)return r`<div class="acts"><div class="choice">${i}</div></div>`;let s=["name","note"].every(c=>o[c]===e[c])&&vi(o.file)===e.stem,l=n.name==="fats"||n.name==="tips"||e.name.trim()!=="",d=()=>{dt(()=>DR(t,e))};return r`<div class="acts">
    ${el(o)} ${n.called?Pc(n.called==="for"?"For":"Name",e,"name"):u}
    ${n.name==="tips"?u:Pc("Note",e,"note")} ${Pc("Name of the file",e,"stem")}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${s||!l||!e.stem.trim()} @click=${d}>
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{dt(()=>g$(o,e,!1))}}>Remove</button>
    </div>
    ${e.used_by?SR(o,e):u}
  </div>`}function Pc(t,e,n){let o=`list-${n}`,i=s=>v(e,{[n]:s.target.value});return r`<div class="field">
    <label for=${o}>${t}</label>
    <input id=${o} .value=${A(e[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function SR(t,e){return r`<div role="alert">
    <p class="alarm">${e.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{dt(()=>g$(t,e,!0))}}>Remove it even so</button>
  </div>`}async function AR(t,e){let n=await lg(t,e),o=a.files?.[t.list].find(i=>i.file===n);o&&(f({list_open:{file:n,name:o.name,note:o.note,stem:vi(n)}}),requestAnimationFrame(()=>document.querySelector("#list-name, #list-stem")?.select()))}async function DR({kind:t,one:e},{name:n,note:o,stem:i}){await dg(t,e,{name:n.trim(),note:o.trim(),stem:i.trim()}),f({list_open:void 0})}async function g$(t,e,n){let o=t.used_by??[];if(o.length&&!n)return v(e,{used_by:o});try{await cg(t,n),f({list_open:void 0})}catch(i){let s=i instanceof y?i.answer.used_by:void 0;if(!s)throw i;v(e,{used_by:s})}}function il(t,e,n){let o=[...a.files?.[t.list]??[]].sort((s,l)=>Number(s.shipped)-Number(l.shipped));return o.length?Qe(o,s=>hn({kind:t,one:s,facts:PR(s),open:()=>n(s.file)})):r`<p class="aside">None yet. ${e}</p>`}var _$=4;function PR({holds:t=[],changed:e}){let n=t.length-_$,o=n>0?[...t.slice(0,_$),`${n} more`]:t;return[o.length?jt(o):"",e?`changed ${U(e)}`:""].filter(Boolean)}var Xs="";function sl({label:t,add:e,act:n,tried:o}){let i=()=>{o(async()=>{await n(Xs.trim()),Xs="",G()})},s=l=>{Xs=l.target.value,G()};return r`<div class="row">
    <div class="field">
      <label for="new-held">${t}, by name</label>
      <input id="new-held" .value=${A(Xs)} @input=${s} autocomplete="off" spellcheck="false" />
    </div>
    <button type="button" ?disabled=${!Xs.trim()} @click=${i}>${e}</button>
  </div>`}function Oe(t){let e=a.removed.filter(n=>n.kind===t);return e.length?r`<details class="removed">
    <summary>Removed, and kept still: ${e.length}</summary>
    <p class="hint">
      What is removed is kept for two years, and comes back from here. Later it is deleted when something else is
      removed.
    </p>
    <ul class="limits">
      ${e.map(OR)}
    </ul>
  </details>`:u}function OR(t){let e=t.name||t.file,n=`removed ${t.removed}`,o=a.open.has(n);return r`<li>
    <p>
      <b>${e}</b> <small>${t.file}, removed ${U(t.removed_at)}, kept until ${U(t.kept_until)}</small>
    </p>
    <div class="choice">
      <button type="button" aria-label="Bring back ${e}" @click=${()=>{dt(()=>pg(t))}}>
        Bring back
      </button>
      ${o?r`<button
                type="button"
                aria-label="Delete ${e} for good"
                @click=${()=>{dt(()=>mg(t))}}
              >
                Delete it for good
              </button>
              <button type="button" @click=${()=>Bt("open",n)}>Keep it</button>`:r`<button type="button" aria-label="Delete ${e} ..." @click=${()=>Bt("open",n)}>
              Delete ...
            </button>`}
    </div>
  </li>`}function b$(){let t=no();return r`${Pe("Fats")}
    <section aria-labelledby="own-fats">
      <h2 id="own-fats">Your own fats</h2>
      ${il(nn,"Each file is named by the formulas that use its fats.",e=>Ds(nn,e))}
      ${t?r$(t):u}
      ${sl({label:"A new fat of your own",add:t?`Add it to ${t.file}`:"Begin a file with it",act:e=>t?Promise.resolve(u$(e)):_a(nn,Rc(e,a.fats)),tried:dt})}
    </section>
    ${MR()} ${Oe("fats")}`}var $$="fats that are listed";function MR(){let t=a.finding?.key===$$?a.finding.text:"",e=a.fats.filter(n=>Fn(n,t)!==void 0);return r`<section aria-labelledby="built-in-fats">
    <h2 id="built-in-fats">Built-in fats</h2>
    <div class="row">
      <div class="field">
        <label for="find-fat">Find by any name</label>
        <input
          id="find-fat"
          .value=${A(t)}
          @input=${n=>f({finding:{key:$$,text:n.target.value}})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
    </div>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Built-in fats and their figures">
      <table class="figures fats">
        <thead>
          <tr>
            <th scope="col">Fat</th>
            <th scope="col">Saponification value, mg KOH/g</th>
            <th scope="col">INCI name</th>
          </tr>
        </thead>
        <tbody>
          ${e.map(n=>FR(n,t))}
        </tbody>
      </table>
    </div>
    ${e.length?u:r`<p class="hint">None is called so.</p>`}
  </section>`}function FR(t,e){let{low:n,high:o,typical:i}=t.saponification_value_mg_koh_per_g,s=Fn(t,e),l=d=>R(d,1);return r`<tr>
    <th scope="row">${t.name}${s&&s!==t.name?r` <small>${s}</small>`:u}</th>
    <td>${l(i)} <small>${l(n)} to ${l(o)}</small></td>
    <td>${t.inci}</td>
  </tr>`}var w$=t=>t.goes_into==="lye",y$=({role:t})=>t==="alkali",BR=t=>y$(t)?"down":"nearest",ti=(t,e)=>nt(t,e,BR(e));function rl(t){let e=t.ingredients.map((i,s)=>({one:i,i:s})).filter(({one:i})=>w$(i)),n=({one:i})=>i.role==="water",o=({one:i})=>y$(i);return[...e.filter(n),...e.filter(i=>!n(i)&&!o(i)),...e.filter(o)]}function v$(t){return t.ingredients.map((e,n)=>({one:e,i:n})).filter(({one:e})=>!w$(e))}function Oc(t){let e=D(t,"/measured_density");return r`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${h({label:"Temperature at the pour",of:t,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F.",term:"batter"})}
      ${h({label:"Cure",of:t,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days.",term:"cure"})}
    </div>
    <div class="row">
      ${h({label:"Unmould after",of:t,at:"/unmould_after",unit:"h",optional:!0,hint:"From the pour on, whatever the mould's own hours are: 18 h."})}
      ${h({label:"Cut within",of:t,at:"/cut_within",unit:"h",optional:!0,hint:"From the pour on: 48 h. A salt bar is cut the day it is poured: 5 h."})}
    </div>
    ${WR(t)}
    ${O({of:t,name:"density",pointers:["/measured_density"],summary:`Measured density${e&&`: ${e}`}`,body:()=>h({label:"Of the plain, unwhipped batter, by weigh-cup",of:t,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var CR=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],k$={after:"",mass:""},x$=3,LR={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:x$},()=>k$)}}};function IR(t){return g(t,"/drying/weighings")!==void 0?"weighed":g(t,"/drying")!==void 0?"law":g(t,"/water_lost_in_cure")===void 0?"unsaid":"share"}function WR(t){let e=IR(t);return r`${T({of:t,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:e,answers:CR,puts:o=>({...ft(t,"",["drying","water_lost_in_cure"]),...LR[o]})})}
  ${e==="share"?r`<div class="row">
          ${h({label:"Of the batter's water, gone when it is sold",of:t,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${e==="law"?r`<div class="row">
          ${h({label:"Of the batter's water, gone in the end",of:t,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${h({label:"After this, 63 % of that is gone",of:t,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${e==="weighed"?ER(t):u}`}function ER(t){let e={of:t,at:"/drying/weighings",least:x$};return r`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${k(e).map((n,o)=>r`<div class="row named" id=${W(e,o)}>
          ${h({label:"Time since the pour",of:t,at:`${e.at}/${o}/after`,unit:"days",short:!0})}
          ${h({label:"Mass",of:t,at:`${e.at}/${o}/mass`,unit:"g",short:!0})}
          ${J(e,o,`weighing ${o+1}`)}
        </div>`)}
    ${Y(e,"One more weighing",()=>H(e,k$,"weighing"))}`}var NR=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],al=t=>ao(t).map(e=>[e.id,e.name]),T$=["unsaid","Not given"],R$=["none","Holds none"],S$=t=>t===void 0?"unsaid":t==="none"?"none":"some",jR=t=>e=>e==="some"?t:e==="none"?"none":void 0;function A$(t,e){return Mc(t,`${e}/contains_fat`,[T$,R$,["some","Holds fat"]],al(t))}function Mc(t,e,n,o){let i=S$(g(t,e)),s=n.some(([l])=>l===i)?i:void 0;return r`${T({of:t,question:"Fat in it",at:e,chosen:s,answers:n,puts:jR({fat:"",share:""})})}
  ${i==="some"?r`<div class="row">
          ${$t({label:"Which fat",of:t,at:`${e}/fat`,answers:o,unsaid:"choose ..."})}
          ${h({label:"Fat in what is weighed",of:t,at:`${e}/share`,unit:"%",short:!0})}
        </div>`:u}`}var HR=[T$,R$,["some","Holds acid"],["typed","By what it takes up"]],qR={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function Fc(t,e){let n=`${e}/contains_acid`,o=g(t,`${n}/takes_up`)!==void 0?"typed":S$(g(t,n));return r`${T({of:t,question:"Acid in it",at:n,chosen:o,answers:HR,puts:i=>qR[i]})}
  ${o==="some"?r`<div class="row">
          ${$t({label:"Which acid",of:t,at:`${n}/acid`,answers:NR.map(i=>[i,i]),unsaid:"choose ..."})}
          ${h({label:"Of that acid in what is weighed",of:t,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?r`<div class="row">
          ${h({label:"Taken up by 1 g of it",of:t,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?Bc(t,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function Bc(t,e,n){let o=g(t,e)===!0?"yes":"no";return T({of:t,question:n,at:e,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var UR=["tsp/lb","tbsp/lb","tsp/kg"],ll=["%","g/kg",...UR].flatMap(t=>[`${t} of fats`,`${t} of batter`]),P$=[...ll,"% of finished soap","g/kg of finished soap"];function D$(t,e){let n=t.trim().replaceAll(/\s+/g," "),o=[...e].sort((i,s)=>s.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():t,o]}function ul(t,e,n,o,i=!1){let s=V(t,e),[l,d]=D$(D(t,e),o),c=a.typed?.key===s?a.typed.text:l;!i&&!(l.trim()&&d)&&me(t,e,s,l.trim()?`${n}: of what`:n);let m=Ut(t,e),_=(w,x)=>{let Q=`${w.trim()} ${x}`.trim();X(t,e,i&&!w.trim()?void 0:Q),G()},b=w=>{let x=w.target.value,[Q,It]=D$(x,o);f({typed:{key:s,text:x}}),_(Q,It||d)};return r`<div class="field rate ${m?"wants":""}">
    <label for=${s}>${n}</label>
    <div class="rate-of">
      <input
        id=${s}
        .value=${A(c)}
        @input=${b}
        @blur=${Go}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${s}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${w=>_(c,w.target.value)}
      >
        <option value="" .selected=${A(d==="")}>of what?</option>
        ${o.map(w=>r`<option value=${w} .selected=${A(w===d)}>${w}</option>`)}
      </select>
    </div>
    ${gt(s,m)}
  </div>`}function zR(t){let e=t.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=e.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,s)=>i+s,0);return{sum:Math.round(o*1e6)/1e6,unread:e.length-n.length}}var JR=.01+1e-9;function Ni(t,e){let{sum:n,unread:o}=zR(e),i=l=>`${String(Math.round(l*1e6)/1e6)} %`;if(o===e.length)return`${t} have no share yet.`;if(o)return`${t} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let s=100-n;return Math.abs(s)<=JR?`${t} add to ${i(n)}.`:s>0?`${t} add to ${i(n)}: ${i(s)} ${s===1?"is":"are"} missing.`:`${t} add to ${i(n)}: ${i(-s)} too much.`}var O$=(t,e)=>ao(t).find(n=>n.id===e)?.name??e,tr=t=>({of:t,at:"/fats",in_order:!0,stays:!0}),dl=t=>k(tr(t));function Ic(t){let e=dl(t),n=a.picking?.of===t&&a.picking.row===e.length;return r`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${e.map((o,i)=>KR(t,i,e))}
    </ol>
    <p class="total" role="status">
      ${e.length?Ni("The fats",e.map(o=>o.share)):"No fat yet."}
    </p>
    ${e.length?u:me(t,"/fats",V(t,"/fats"),"The fats")}
    ${n?F$(t):Y(tr(t),"Add a fat",()=>M$(t,e.length))} ${e0(t)}
  </section>`}function KR(t,e,n){let o=`/fats/${e}`,i=O$(t,String(n[e].fat??""))||"Which fat?",s=xt(t,`${o}/fat`)??xt(t,o),l=a.picking?.of===t&&a.picking.row===e;return r`<li class="formula-row" id=${W(tr(t),e)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${V(t,`${o}/fat`)}
        aria-expanded=${l?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>l?Cc():M$(t,e)}
      >
        ${i}
      </button>
      ${h({label:"Share",of:t,at:`${o}/share`,unit:"%",short:!0})} ${J(tr(t),e,i)}
    </div>
    ${s?r`<p class="complaint">${s}</p>`:u} ${l?F$(t):u}
    ${n$(t,String(n[e].fat??""))}
    ${O({of:t,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${GR(n[e])}`,body:()=>XR(t,e)})}
  </li>`}function M$(t,e){f({picking:{of:t,row:e,text:""}}),I(B("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function Cc(){let t=a.picking;f({picking:void 0}),t&&I(ot(t.of,t.row<dl(t.of).length?`/fats/${t.row}/fat`:"/fats"))}function Lc(t,e){let{row:n}=a.picking,o=dl(t);f({picking:void 0});let i=o[n]?{fat:e,share:o[n].share??""}:{fat:e,share:""};Js(tr(t),`${O$(t,e)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],ot(t,`/fats/${n}/share`))}function F$(t){let{row:e,text:n}=a.picking,o=dl(t).map(m=>m.fat),i=VR(t,n),s=i.filter(m=>!o.includes(m.id)||o[e]===m.id),l=s.find(m=>m.id===a.picking.lit),d=m=>{f({picking:{of:t,row:e,text:m.target.value}})},c=m=>{let _=l?s.indexOf(l)+m:m>0?0:s.length-1,b=s[(_+s.length)%s.length];b&&(f({picking:{of:t,row:e,text:n,lit:b.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${b.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&Cc(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),c(m.key==="ArrowDown"?1:-1));let _=s.find(w=>Qt(w.name)===Qt(n.trim())),b=l??(s.length===1?s[0]:_);m.key==="Enter"&&b&&Lc(t,b.id)};return r`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input
          id="find-fat"
          role="combobox"
          aria-expanded="true"
          aria-controls="fats-found"
          aria-activedescendant=${l?`fat-${l.id}`:u}
          .value=${n}
          @input=${d}
          @keydown=${p}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" @click=${Cc}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${a.fats.length?i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name.":"The list of fats is on its way ..."}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let _=o.includes(m.id)&&o[e]!==m.id,b=Fn(m,n);return r`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===l?"lit":""}
          ?disabled=${_}
          aria-selected=${m===l||o[e]===m.id?"true":"false"}
          @click=${()=>Lc(t,m.id)}
        >
          ${m.name}${b===m.name||!b?"":`, ${b}`}${_?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{QR(t,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function VR(t,e){let n=ao(t).filter(l=>Fn(l,e)!==void 0),o=e.split(/\s+/).filter(l=>l.length>2);if(n.length||o.length<2)return n;let i=l=>o.filter(d=>Fn(l,d)!==void 0).length,s=Math.max(...ao(t).map(i));return s?ao(t).filter(l=>i(l)===s):[]}async function QR(t,e){if(!await ga(t))return;let o=e.trim(),i=Ua(o,[...a.fats,...tt("own_fats","/fats")]),s=tt("own_fats","/fats").length;X("own_fats",`/fats/${s}`,{...Za,id:i,name:o}),Lc(t,i),zt("own_fats",i),I(ot("own_fats",`/fats/${s}/${o?"inci":"name"}`))}function GR(t){let e=t.saponification_value,n=e,i=e===""||e!==null&&typeof e=="object"&&n.low===""?"to be filled in":e===void 0?"published values":e!==null&&typeof e=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(e)} mg KOH per g`;return`: ${t.lot?`${String(t.lot)}, `:""}${i}`}var YR=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],ZR={published:void 0,one:"",range:{low:"",typical:"",high:""}};function XR(t,e){let n=`/fats/${e}/saponification_value`,o=g(t,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",s=g(t,`/fats/${e}/confirmed`)!==void 0,l=(d,c)=>h({label:d,of:t,at:c,number:!0,short:!0});return r` ${h({label:"Lot",of:t,at:`/fats/${e}/lot`,optional:!0,short:!0})}
  ${T({of:t,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:YR,puts:d=>ZR[d],hint:t0(t,D(t,`/fats/${e}/fat`))})}
  ${i==="one"?r`<div class="row">${l("Saponification value",n)}</div>`:u}
  ${i==="range"?r`<div class="row">
          ${l("Lowest",`${n}/low`)} ${l("Typical",`${n}/typical`)} ${l("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||s?Bc(t,`/fats/${e}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function t0(t,e){let n=ao(t).find(l=>l.id===e);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:s}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${s}).`}function e0(t){let e=Ls(t),n=Array.isArray(e)?`In it: ${e.map(i=>i.name).join(", ")}.`:e==="none"?"No such file is found from here.":void 0,o=D(t,"/own_fats");return O({of:t,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>h({label:"Its name, as it lies beside this formula",of:t,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var n0=t=>mt.includes(t);function cl(){let t=a.complaint;return!t?.field||t.lye_heavy?!1:Bi().some(({of:e,at:n})=>Ae(e)&&(n===t.field||n.startsWith(`${t.field}/`)))}function er(){let t=a.complaint?Bi():[];return t.length?r`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${t.length}</p>
    <ul class="choice">
      ${t.map(e=>r`<li>
            <button type="button" @click=${()=>o0(e)}>
              ${e.part?r`<small>${e.part}</small> `:u}${e.label}
            </button>
          </li>`)}
    </ul>
  </div>`:u}function o0({of:t,id:e,folds:n}){for(let o of n)lt(o);f({has_asked:!0}),n0(t)?(a.view!=="formula"||a.formula_of!==t)&&ne(t):a.view!=="set-up"&&!(t==="own_fats"&&a.view==="formula")&&f({view:"set-up"}),requestAnimationFrame(()=>I(B(e)))}var B$="danger-of-superfat";function Wc(t,e){return r`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${h({label:"Superfat (share of all fat left unsaponified)",of:t,at:"/superfat",unit:"%",term:"superfat",described_by:lo(t).length?B$:void 0})}
    </div>
    ${Hs(t,B$)} ${i0(t)} ${d0(t,e)}
  </section>`}function i0(t){let e=tt(t,"/alkali"),n=e.length>1?"both":e[0]?.alkali;return r`${T({of:t,question:"Alkali",term:"alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>s0(e,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${e.map((i,s)=>r0(t,i,s,e.length>1))}
  ${e.length>1?r`<p class="total" role="status">
          ${Ni("The two",e.map(i=>i.share))}
        </p>`:u}`}function s0(t,e){let n=(o,i)=>({purity:"",...t.find(s=>s.alkali===o),alkali:o,share:i});return e==="both"?[n("NaOH",""),n("KOH","")]:[n(e,"100 %")]}function r0(t,e,n,o){let i=`/alkali/${n}`,s=String(e.alkali??""),l=xt(t,i)??xt(t,`${i}/alkali`);return r`<div class="formula-row">
    ${l?r`<p class="complaint">${l}</p>`:u}
    <div class="row">
      ${o||e.share!=="100 %"?h({label:`${s}: share of the fats it saponifies`,of:t,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):u}
      ${h({label:`${s}: purity`,of:t,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document.",term:n===0?"purity":void 0})}
    </div>
    ${O({of:t,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${a0(e.purity_range)}`,body:()=>l0(t,i)})}
  </div>`}var a0=t=>Array.isArray(t)?`: ${t.map(String).join(" to ")}`:"";function l0(t,e){let n=`${e}/purity_range`,o=g(t,n)!==void 0;return r`${T({of:t,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?r`<div class="row">
          ${h({label:"Lowest",of:t,at:`${n}/0`,unit:"%",short:!0})}
          ${h({label:"Highest",of:t,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var u0={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function d0(t,e){let n=Object.keys(g(t,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(u0);return r`${T({of:t,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:s=>({[s]:""}),then:s=>`/water/${s}`,hint:p0(e)})}
    <div class="row">${n.map(s=>c0(t,s))}</div>`}function c0(t,e){let n=`/water/${e}`;return e==="water_to_alkali"?h({label:"Parts of water for 1 part of pure alkali",of:t,at:n,number:!0}):e==="lye_strength"?h({label:"Strength: pure alkali in alkali and water together",of:t,at:n,unit:"%"}):h({label:"Water, as a share of the fats",of:t,at:n,unit:"%"})}function p0(t){if(!(!t||a.is_old))return`It now makes a strength of ${R(t.lye_strength_percent,1)} %; ${R(t.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${R(t.water_percent_of_fats,1)} % of the fats.`}function fo(t,e,n){let o=m0(t,e);return O({of:t,name:`${e} label`,pointers:["inci","allergens","document"].map(i=>`${e}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>r`${h0(t,`${e}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${C$(t,`${e}/allergens`,"Allergen","Add an allergen",(i,s)=>g0(t,i,s))}
        ${h({label:"Supplier's document, with its date",of:t,at:`${e}/document`,optional:!0})}`})}function m0(t,e){let n=tt(t,`${e}/allergens`).length;return[g(t,`${e}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var Ec={name:"",share:""},f0={unsaid:void 0,one:"",many:[Ec]};function h0(t,e,n){let o=g(t,e),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",s=l=>l==="many"&&o?[{...Ec,name:o}]:f0[l];return r`${T({of:t,question:`INCI of ${n}`,at:e,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:s})}
  ${i==="one"?h({label:"INCI name",of:t,at:e}):u}
  ${i==="many"?r`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${C$(t,e,"INCI name","One more INCI name")}`:u}`}function g0(t,e,n){return T({of:t,question:`Allergen ${n+1}: on the EU's list?`,at:`${e}/listed`,chosen:g(t,`${e}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function C$(t,e,n,o,i){let s={of:t,at:e};return r`${k(s).map((l,d)=>r`<div class="row named" id=${W(s,d)}>
        ${h({label:`${n} ${d+1}`,of:t,at:`${e}/${d}/name`})}
        ${h({label:`Share ${d+1}`,of:t,at:`${e}/${d}/share`,unit:"%",short:!0})}
        ${i?.(`${e}/${d}`,d)??u} ${J(s,d,String(l.name||`${n} ${d+1}`))}
      </div>`)}
  ${Y(s,o,()=>H(s,Ec,n))}`}var _0=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:A0},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:v0},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:k0},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:x0}];function Nc(t){return _0.map(e=>{let n={of:t,at:`/${e.list}`},o=k(n),i=(s,l)=>r`<li class="formula-row" id=${W(n,l)}>
        ${b0(t,e,n,s,l)} ${e.row(t,`${n.at}/${l}`,s)}
      </li>`;return r`<section class="card" aria-labelledby="${e.list}-title">
      <h2 id="${e.list}-title">${e.title}</h2>
      ${o.length?r`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:r`<p class="aside">${e.aside}</p>`}
      ${Y(n,e.add,()=>H(n,$0(e),e.add.replace("Add ","")))}
    </section>`})}function $0(t){return t.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function b0(t,e,n,o,i){let s=`/${e.list}/${i}`,l=xt(t,s),d=String(o.name||`number ${i+1} of the ${e.list}`);return r`${l?r`<p class="complaint">${l}</p>`:u}
    <div class="row named">
      ${h({label:"Name",of:t,at:`${s}/name`})}
      ${e.list==="liquids"?u:ul(t,`${s}/rate`,"How much",ll)}
      ${J(n,i,d)}
    </div>`}function L$(t,e,n,o){let i=`${e}/goes_into`,s=g(t,i);return T({of:t,question:"Goes into",at:i,chosen:s||void 0,answers:n,puts:p=>p,hint:o||s?void 0:"The batter, unless you name another place.",optional:!o})}function I$(t,e,n){let o=g(t,`${e}/stirred_in`);return r`${L$(t,e,y0,n)}
  ${g(t,`${e}/goes_into`)==="lye"||o!==void 0?T({of:t,question:"Stirred into the lye",at:`${e}/stirred_in`,chosen:String(o??""),answers:w0,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):u}`}var w0=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],y0=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function jc(t,e,n){let o=(l,d,c)=>l?`${d}${String(l)}${c}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),s=["bulk_density","density","limit"].map(l=>`${e}/${l}`);return O({of:t,name:`${e} densities`,pointers:s,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>r` <div class="row">
          ${h({label:"Bulk density (for spoons)",of:t,at:`${e}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${h({label:"True density (in the batter)",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${ul(t,`${e}/limit`,"The most that the supplier's document allows",P$,!0)}`})}function Hc(t,e,n,o){let i=(l,d)=>l===void 0?"":l==="none"?`no ${d}`:d,s=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return O({of:t,name:`${e} holds`,pointers:[`${e}/contains_fat`,`${e}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${s&&`: ${s}`}`,body:()=>r`${A$(t,e)} ${o?Fc(t,e):u}`})}var pl=(t,e,n)=>fo(t,e,String(n.name||"it"));function v0(t,e,n){return r`${I$(t,e,!0)}
    <div class="folds">${Hc(t,e,n,!0)} ${jc(t,e,n)} ${pl(t,e,n)}</div>`}function W$(t,e,n){return O({of:t,name:`${e} place`,pointers:[`${e}/goes_into`,`${e}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>I$(t,e,!1)})}function k0(t,e,n){return r`<div class="folds">
    ${jc(t,e,n)} ${pl(t,e,n)} ${W$(t,e,n)} ${Hc(t,e,n,!1)}
  </div>`}function x0(t,e,n){return r`${R0(t,e)}
    <div class="folds">
      ${jc(t,e,n)} ${pl(t,e,n)} ${W$(t,e,n)} ${Hc(t,e,n,!0)}
    </div>`}var T0=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function R0(t,e){let n=`${e}/dispersed_in`,o=g(t,n)!==void 0,i=g(t,`${n}/from`);return r`${T({of:t,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:l=>l==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?r`<div class="row">
            ${$t({label:"Which oil",of:t,at:`${n}/fat`,answers:al(t),unsaid:"choose ..."})}
            ${h({label:"Oil for 1 g of colour",of:t,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${T({of:t,question:"That oil is",at:`${n}/from`,chosen:i,answers:T0,puts:l=>l,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var S0=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function A0(t,e,n){let o=(i,s,l)=>O({of:t,name:`${e}/${i}`,pointers:[`${e}/${i}`],summary:s,body:l});return r`${P0(t,e,n)}
    ${L$(t,e,[["lye","The lye"],["batter","The batter"]],!0)}
    ${M0(t,e)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>D0(t,`${e}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>Fc(t,e))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>h({label:"Density",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${pl(t,e,n)}
    </div>`}function D0(t,e){let n=g(t,e)===!0?"ice":"liquid";return T({of:t,question:"Goes in as ice, which keeps the lye cooler",at:e,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function P0(t,e,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=s=>({...ft(t,e,["replaces","rate"]),[s]:""});return r`${T({of:t,question:"How much",at:e,asked_at:`${e}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:O0,puts:i})}
  ${o==="replaces"?r`<div class="row">
          ${h({label:"Of the formula's water",of:t,at:`${e}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?ul(t,`${e}/rate`,"Rate",ll):u}`}var O0=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function M0(t,e){let n=`${e}/composition`,o=typeof g(t,n)=="object",i={water:"",sugar:"",salt:"",source:""},s=(d,c)=>h({label:d,of:t,at:`${n}/${c}`,unit:"%",short:!0});return r`${T({of:t,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:d=>d==="label"?i:""})}
  ${o?r`<div class="row">${s("Water","water")} ${s("Sugar","sugar")} ${s("Salt","salt")}</div>
          ${Mc(t,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...al(t)])}
          <div class="row">
            ${h({label:"Where the figures are from",of:t,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:r`<div class="row">
          ${$t({label:"Built-in figures of",of:t,at:n,answers:S0.map(d=>[d,d]),unsaid:"choose ..."})}
        </div>`}`}var nr=()=>Object.keys(g("studio","/cups")??{}),or=()=>nr().length===1?{net:""}:nr().length?{cup:"",net:""}:{holds:"",net:""},E$="\0another";function ir(t,e="Cup holds"){let n=`${t}/holds`,o=nr();if(g("run",n)!==void 0||!o.length)return r`${h({label:e,at:n,unit:"ml",short:!0})}${o.length?F0(t):u}`;let i=l=>l===E$?j("run","Another cup",t,{...qc(t),holds:""},ot("run",n)):j("run",`Cup: ${l}`,t,{...qc(t),cup:l}),s=l=>D("studio",`/cups/${N(l)}`);return $t({label:"Which cup",at:`${t}/cup`,answers:[...o.map(l=>[l,`${l}, ${s(l)}`]),[E$,"Another cup"]],unsaid:"choose ...",chosen:D("run",`${t}/cup`)||(o.length===1?o[0]:""),take:i})}function qc(t){let{cup:e,holds:n,...o}=g("run",t)??{};return o}var F0=t=>r`<button type="button" @click=${()=>j("run","A cup of the studio",t,qc(t))}>
    A cup of my studio
  </button>`;function j$(){return rt()?r`<div class="row">
    ${nr().map(t=>h({of:"studio",label:`${t} holds`,at:`/cups/${N(t)}`,unit:"ml",short:!0,optional:!0}))}
    ${B0()}
  </div>`:r`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function B0(){let t=()=>{let e=document.getElementById("new-cup"),n=e.value.trim()||N$();e.value="",j("studio",`${n} added`,`/cups/${N(n)}`,"",ot("studio",`/cups/${N(n)}`))};return r`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${N$()} />
    </div>
    <button type="button" @click=${t}>Add the cup</button>`}function N$(){for(let t=1;;++t){let e=t===1?"weigh-cup":`weigh-cup ${t}`;if(!nr().includes(e))return e}}var C0=["ice bath","cold water","fridge","room"].map(t=>[t,t==="room"?"the room":t]),Uc=t=>({run:`/${t}/temperatures`,studio:`/temperatures/${t}`});function ml(t){let{run:e}=Uc(t);return O({name:e,pointers:[e],summary:"How warm",body:()=>r` <p class="hint">
          ${rt()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${mo("How warm",[Uc(t)])} ${E("run",e)} ${L0(t)}`})}function L0(t){let{run:e,studio:n}=Uc(t),o=d=>({run:`${e}/${d}`,studio:`${n}/${d}`}),i=a.units==="us"?"\xB0F":"\xB0C",s=(d,c,p=i)=>Lt(o(d),{label:c,unit:p,optional:!0,takes_part:!0,short:!0}),l=o("cooled_in");return r`<div class="row">
    ${s("room_at","Room and dry alkali")} ${s("water_at","Water")}
    ${s("ice_share","Of the water, as ice","%")} ${s("lye_used_at","Lye when it is used")}
    ${s("fats_at","Fats")} ${s("batter_below","Batter must stay below")}
    ${$t({label:"The lye cools in",...Vs(l),answers:C0,unsaid:"not given",optional:!0})}
  </div>`}var he=()=>$(a.run.now,"/pipe")!==void 0;function H$(){let t=e=>{let n=M(e,"/pipe",{formula:"",fills_headspace:"",whip:or()});return rt()?n:M(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};lt("set-up pipe"),fe("run","Topping added",t,B("lane-pipe"))}function I0(t){let e=Object.keys($(t,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",$(t,"/batch/whippings")!==void 0&&e?"/batch":"/batch/whippings"].reduce((o,i)=>$(o,i)===void 0?o:M(o,i,void 0),t)}function W0(){fe("run","Topping removed",I0,B("topping-back"))}function q$(){let t=a.past.at(-1)?.run?.now;return!t||$(t,"/pipe")===void 0||he()?u:r`<button type="button" id="topping-back" @click=${As}>Bring the topping back</button>`}function zc(){return r`${z0()} ${ml("pipe")}
    <p class="choice"><button type="button" @click=${W0}>Take the topping away</button></p>`}var E0=["trials","beads","envelope"];function Jc(t){return E0.every(e=>g("run",`/pipe/${e}`)===void 0)&&me("run","/pipe",`${V("run","/pipe/trials")}-add`,"How large the topping is"),r`<h3>How large is the topping?</h3>
    ${E("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${Yt({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:or()},body:N0})}
      ${Yt({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:j0})}
    </div>
    ${Yt({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:X_,body:()=>t$(t)})}
    ${t?q0(t):u}`}function N0(){let t={at:"/pipe/trials/weighed",least:1};return r`<div class="trials">
      ${k(t).map((e,n)=>r`<div class="row" id=${W(t,n)}>
            ${h({label:`Trial ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${J(t,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${Y(t,"One more trial",()=>H(t,"","trial"))}
    <div class="row">
      ${h({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${ir("/pipe/trials/weigh_cup")}
    </div>
    ${E("run","/pipe/trials/weigh_cup")}`}function j0(){let t="/pipe/envelope",e=g("run",`${t}/form`);return r`${T({question:"Form of the outline",at:`${t}/form`,chosen:e,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${h({label:"Diameter",at:`${t}/diameter`,unit:"mm",short:!0})}
      ${h({label:"Height",at:`${t}/height`,unit:"mm",short:!0})}
      ${h({label:"Share that is soap, not air",at:`${t}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var H0={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function q0(t){let e=t.visible_by;if(!e)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:e[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return r`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:s},l)=>L({key:`pipe.by.${i}`,label:H0[i],note:o(l),shown:Ct(a.units,s),of:`pipe.visible_by.${i}_ml`}))}
    ${U0(t)}`}function U0(t){let e=t.visible_by?.suggested_correction;if(!e||a.is_old)return u;let n=R(e.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",s=i&&$(a.run.now,`${o}/correction`)!==e.correction,l=()=>j("run","correction kept",o,{correction:e.correction,trials:e.trials});return r`<p>
      Your hand lays down ${n} times the computed beads (${e.trials}
      ${e.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${s?r`<button type="button" @click=${l}>Keep ${n} for my tip</button>`:u}`}function Kc(t){return r`<h3>The whip planned for</h3>
    <div class="row">
      ${h({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g",term:"weigh_cup"})}
      ${ir("/pipe/whip")}
    </div>
    ${E("run","/pipe/whip")}
    ${t?.loads?r`<p class="aside of-plan">${t.loads} bag loads.</p>`:u}`}function z0(){let t="/pipe/pace",e=(n,o,i,s=!1)=>h({label:n,at:`${t}/${o}`,unit:i,optional:s,short:!0});return O({name:"pace",pointers:[t],summary:"Piping speed",body:()=>Yt({at:t,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>r`<div class="row">
            ${e("Can be piped for","open_time","min")} ${e("To pipe one","time_per_piece","s")}
            ${e("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function J0(t,{at:e,figure:n}){let o=$(t,e),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function sr(t,e,n){return e?r`<button type="button" @click=${()=>n(e.at,J0(t,e))}>It is really so: keep it</button>`:u}var Qc=500,K0=()=>$(a.run.now,"/cut")===void 0&&V0()>=Qc,V0=()=>a.plan?.pour.brimful_ml??a.measured?.gauge.pockets[0]?.brimful_ml??0,fl={run:"/cut/kerf",studio:"/kerf"};function U$(t){lt("set-up cut"),j("run","Cut","/cut",{bar:Vc[t],...rt()?{}:{kerf:""}},ot("run",`/cut/bar/${Object.keys(Vc[t])[0]}`))}function Q0(){j("run","Left whole","/cut",void 0,B("cut-into-bars"))}function z$(){return K0()?r`<button type="button" id="cut-into-bars" @click=${()=>U$("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>U$("slab")}>Cut it into bars</button>`:u}var Vc={loaf:{thickness:""},slab:{length:"",width:""}};function G0(){let t=g("run","/cut/bar")??{};return"thickness"in t?"loaf":"length"in t||"width"in t?"slab":void 0}var Y0={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function J$(){let t=G0(),e=(o,i)=>h({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=D("run","/cut/along");return r` ${T({question:"What is cut?",at:"/cut/bar",chosen:t,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>Vc[o]})}
    <div class="row">
      ${t==="loaf"?h({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${t==="slab"?["length","width"].map(o=>h({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${Lt(fl,{label:"Kerf of each cut",unit:"mm",short:!0,term:"kerf"})}
      ${e("Off each end","end_trim")} ${e("Off each side","side_trim")}
      ${e("Planed off the top","top_planing")}
      ${e(t==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm. ${mo("Kerf",[fl])}</p>
    ${t?T({question:t==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:Y0[t],puts:o=>o||void 0}):u}
    <button type="button" @click=${Q0}>Leave it whole</button>`}var hl=t=>/^\s*0*[1-9]\d{0,8}\s*$/.test(t)?Number(t):void 0;function gl(t,e,n){return r`<div class="field short">
    <label for=${t} data-said="required">Pieces to sell</label>
    <input
      id=${t}
      aria-required="true"
      .value=${A(e)}
      @input=${o=>n(o.target.value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`}function Z0({outline:t,above:e}){let n=Math.max(4,(t.right-t.left)*.06),o=e.flat().map(([,m])=>m),[i,s]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],l=-t.brim-2*n+i,d=l-s-n,c=[t.left-n,d,t.right-t.left+2*n,-t.floor+n-d],p=(m,_)=>S`<path class="shaded pour" fill-rule="evenodd" d=${_} /><path class="wall ${m}" fill-rule="evenodd" d=${_} />`;return r`<div class="drawing tall">
    <svg
      viewBox=${c.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",Os(e,l))}${p("side",Os(t.loops))}
    </svg>
  </div>`}function ji(t,e=!1,n=[]){let o=n.length?r`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!t)return r`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=t,s=i.pockets[0];return r`${Z0(t)}
    <p class="order ${e?"old":""}" role="status">
      Holds
      <b>${P(Ct(a.units,s.brimful_ml))}</b>${i.pockets.length>1?r` in each of ${i.pockets.length}, ${P(Ct(a.units,i.total_ml))} together`:u},
      ${P(Mt(a.units,s.brim_mm-s.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?r`<p class="aside">
            ${i.measurements.map(l=>`By ${l.by} ${P(Ct(a.units,l.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?r`<ul class="limits">
            ${i.notes.map(l=>r`<li>${l.text}</li>`)}
          </ul>`:u}`}var X0={mm:"in",g:"oz","\xB0C":"\xB0F"},tS={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function _l(t,e,n=""){let o=Gc(t);if(o)return o.unit??"";let i=Re($(z(),t));return tS[e]?.test(i)?i:n||(a.units==="us"?X0[e]??e:e)}var $l=()=>f({typed:void 0}),Hi=t=>`d${t.replaceAll("/","-")}`,Gc=t=>a.typed?.key===Hi(t)?a.typed:void 0,bl=t=>Gc(t)?.text??String($(z(),t)??"");function ho(t){let{complaint:e}=it();return e&&(e.field===t||e.field.startsWith(`${t}/`))?e.line:void 0}function Yc(t,e,n,o){let{pointer:i}=t,s=l=>{let d=l.target.value,c=t.unit?_l(i,t.unit,t.unit_before):"";f({typed:{key:Hi(i),text:d,unit:c}}),Rt(i,eS(t,d,c))};return r`<input
    id=${Hi(i)}
    .value=${A(bl(i))}
    @input=${s}
    @blur=${$l}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${t.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${e??u}
    aria-invalid=${ho(i)?"true":"false"}
  />`}function eS(t,e,n){if(!((t.optional||t.count)&&!e.trim()))return t.count&&/^\s*\d{1,6}\s*$/.test(e)?Number(e):n&&kt(e)?`${e.trim()} ${n}`:e}function ge(t,e){let n=Hi(t.pointer),o=ho(t.pointer),i=nS(t.pointer)??t.hint,s=t.unit?` (${_l(t.pointer,t.unit,t.unit_before)})`:"";return r`<div class="field ${t.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${t.label}${s}</label> ${Yc(t,o||i?`${n}-said`:void 0,e)}
    ${gt(n,o,i)}
  </div>`}function nS(t){let e=$(z(),t),n=Gc(t);if(!(!n?.text.includes("/")||typeof e!="string"||e===n.text))return`taken as ${e}`}function wl(t){let e=t.toLowerCase(),{file:n,shipped:o}=it().open,i=o?"":n;return a.files?.moulds.find(s=>s.file!==i&&s.name.trim().toLowerCase()===e)?.file}async function rr(t){let{open:e}=it();try{if(await on(e),e.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));f({files:await Er()})}catch(n){if(!(n instanceof y))throw n;return oc(n)}a.run.file&&(je(),ct()),t(e.file)}var In="/shape/points",K$=500,go=(t,e)=>[In,t,...e?[e]:[]].join("/"),V$=t=>Array.from({length:t.least},()=>({}));function Q$(t){let e=le(z(),In),n=iS(),{complaint:o}=it(),i=o?.field===In&&!o.about?o.line:void 0;return r`<h3 id="points-title">Points</h3>
    <p class="hint">${t.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${t.columns.map(s=>r`<span
              >${s.label} (${_l(go(-1,s.name),s.unit,G$(t,e.length,s.name))})</span
            >`)}
      </div>
      ${e.map((s,l)=>oS(t,l,n))}
    </div>
    ${i?r`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${e.length>=K$} @click=${()=>vl(t,e.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function oS(t,e,n){let o=n.has(e)?`point ${n.get(e)}`:"empty point",i=sS(e),s=l=>{let{name:d,label:c,unit:p}=t.columns[l],m={label:c,pointer:go(e,d),unit:p,unit_before:G$(t,e,d)},_=`${c}, ${n.has(e)?o:`point ${e+1}`}`;return Yc(m,i?`point-${e}-said`:void 0,rS(t,e,l),_)};return r`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(e)??""}</span>${s(0)}${s(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>vl(t,e)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>Y$(t,e)}>×</button>
    ${i?r`<p id="point-${e}-said" class="complaint">${i}</p>`:u}
  </div>`}function iS(){let t=[...$s(z()),...Xr(z())].sort((e,n)=>e-n);return new Map(t.map((e,n)=>[e,n+1]))}function sS(t){let{complaint:e}=it();return ho(go(t))??(e?.about===go(t)?e.line:void 0)}function G$(t,e,n){let o=(i,s)=>Re($(z(),go(i,s)));for(let i=e-1;i>=0;--i)if(o(i,n))return o(i,n);return t.columns.map(({name:i})=>o(e,i)).find(Boolean)??""}function yl(t,e){queueMicrotask(()=>document.getElementById(Hi(go(t,e)))?.focus())}function vl(t,e){let n=[...le(z(),In)];n.length>=K$||(n.splice(e,0,{}),$l(),Rt(In,n),yl(e,t.columns[0].name))}function Y$(t,e,n=0){let o=le(z(),In).filter((i,s)=>s!==e);$l(),Rt(In,o.length?o:[{}]),yl(Math.max(0,Math.min(e-(n?1:0),o.length-1)),t.columns[n].name)}function rS(t,e,n){let[o,i]=t.columns.map(({name:s})=>s);return s=>{let l=!bl(go(e,o))&&!bl(go(e,i));if(s.key==="Enter"&&s.shiftKey)vl(t,e+1);else if(s.key==="Enter"&&n===0)yl(e,i);else if(s.key==="Enter"&&e+1<le(z(),In).length)yl(e+1,o);else if(s.key==="Enter")vl(t,e+1);else if(s.key==="Backspace"&&l&&le(z(),In).length>1)Y$(t,e,e>0?1:0);else return;s.preventDefault()}}var Zc={weighings:[""]},Xc=/\.(3mf|gltf|glb)$/i;function kl(t){let e=qn(t);return e?{kind:t,points:V$(e)}:{kind:t}}var aS=()=>Rt("/water",Zc),gn=t=>Be(z(),t),ar=()=>_s(z());function Z$(t){let{open:e,answer:n,is_old:o}=it();return r`${mn(e,()=>{rr(t)})} ${fn(e)}
    ${e.shipped?u:Ei(a.files?.moulds.find(i=>i.file===e.file))}
    ${gn("shape")&&gn("mesh")?r`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${gn("shape")?ut("Shape",ar(),Object.entries(Gf),lS):u}
    <div class="beside ${qn(ar())?"rows":""}">
      <div>
        ${tp()} ${gn("shape")?dS():u} ${gn("mesh")?cS():u}
        ${ep()} ${gn("water")?mS():u} ${hS()}
      </div>
      <div class="stays">${ji(n,o,tb())} ${gS(t)}</div>
    </div>`}function lS(t){let e={...it().shapes,[ar()]:z().shape};v(it(),{shapes:e,answer:void 0}),Rt("/shape",e[t]??kl(t))}function uS(){let{shipped:t,file:e}=it().open;return t?a.files?.moulds.find(n=>n.file===e)?.name??e:void 0}function tp(){let t=uS();return ge({label:"What you call it",pointer:"/name",wide:!0,hint:t?`${t} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function dS(){let t=ar(),e=qn(t);return r`${pi(t).length?r`<div class="row">
          ${pi(t).map(n=>ge({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${e?Q$(e):u}`}function ep(t=Eu(z())){return r`<div class="row">
      ${t?u:ge({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${ge({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${ge({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${ge({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var np=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],op=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function cS(){let t=o=>String($(z(),`/mesh/${o}`)??""),e=(o,i,s)=>{let l=ho(`/mesh/${i}`);return r`<h4>${o}</h4>
      ${ut(o,t(i),s,d=>Rt(`/mesh/${i}`,d||void 0))}
      ${l?r`<p class="complaint">${l}</p>`:u}`},n=ho("/mesh/file");return r`<h3>Its mesh <small>${t("file")}</small></h3>
    ${n?r`<p class="complaint">${n}</p>`:u}
    ${Xc.test(t("file"))&&!t("unit")?u:e("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${e("What it shows","role",np)} ${e("Which way is up","up",op)}
    ${t("role")==="body"?pS():u}
    <div class="row">
      ${ge({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${ge({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function pS(){let t=$(z(),"/mesh/on_board")===!0?"yes":"no";return r`<h4>Open below, and stood on a board?</h4>
    ${ut("Stood on a board",t,[["no","No"],["yes","Yes, the board closes it"]],e=>Rt("/mesh/on_board",e==="yes"?!0:void 0))}`}function mS(){let t=$(z(),"/water/filled_to"),e=t===void 0?void 0:t==="brim"?"brim":$(t,"/depth")!==void 0?"depth":"below_brim",n=s=>Rt("/water/filled_to",s==="brim"?"brim":{[s]:""}),o=$(z(),"/water/weighed_in"),i=e===void 0||e==="brim"?ho("/water/filled_to"):void 0;return r`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${ge({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${ut("Filled to",e,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?r`<p class="complaint">${i}</p>`:u}
    ${e==="depth"?ge({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${e==="below_brim"?ge({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${ut("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],s=>Rt("/water/weighed_in",s))}
    <div class="row">
      ${le(z(),"/water/weighings").map((s,l)=>ge({label:`Water, round ${l+1}`,pointer:`/water/weighings/${l}`,unit:"g"},fS(l)))}
    </div>
    ${it().complaint?.field==="/water/weighings"?r`<p class="complaint">${it().complaint.line}</p>`:u}
    <button type="button" @click=${X$}>One more round</button>`}function X$(){let t=le(z(),"/water/weighings").length;Rt(`/water/weighings/${t}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${t}`)?.focus())}var fS=t=>e=>{e.key==="Enter"&&(t+1===le(z(),"/water/weighings").length?X$():document.getElementById(`d-water-weighings-${t+1}`)?.focus())};function hS(){let t=(e,n)=>r`<button type="button" @click=${n}>${e}</button>`;return r`<div class="choice">
    ${gn("shape")?u:t("Add measures, as a check",()=>Rt("/shape",kl("block")))}
    ${gn("shape")&&gn("mesh")?t("Leave the measures out",()=>Rt("/shape",void 0)):u}
    ${gn("water")?t("Leave the water out",()=>Rt("/water",void 0)):t("Add weighed water",aS)}
  </div>`}function tb(){let t=Xr(z()).length;return t?[...bs(z()),t===1?"the other number of a point":`the other numbers of ${t} points`]:bs(z())}function gS(t){let e=String(z().name??"").trim(),n=wl(e),{open:o,answer:i,is_old:s,complaint:l}=it(),d=i&&!s&&!l&&!tb().length&&e&&!n,c=o.shipped?"":o.file;return r`<button type="button" class="strong" ?disabled=${!d} @click=${()=>{rr(t)}}>
      ${c?"Save the change":"Use this mould"}
    </button>
    ${c?r`<p class="aside">It stays in ${c}.</p>`:u}
    ${e?u:r`<p class="hint">Give it a name first.</p>`} ${ip(e,n)}
    ${l?r`<p class="alarm" role="status">${_S(l.field)}${l.line}</p>
            ${sr(z(),l.keep,Rt)}`:u}`}var ip=(t,e)=>e?r`<p class="complaint" role="status">
        Another mould is called ${t} already (${e}); give this one a name of its own.
      </p>`:u;function _S(t){let[,e]=/^\/shape\/points\/(\d+)/.exec(t)??[];if(e)return`Point ${Number(e)+1}: `;if(t==="/shape/points")return"";let n=pi(ar()).find(({name:s})=>t===`/shape/${s}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${t.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:t?`${t.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var $S=200*2**20;async function eb(t){if(!t)return;let e={name:t.name,share:0,sizes:[],is_measuring:!1,questions:0};if(f({mesh:e}),Rt("/name",t.name.replace(/\.\w+$/,"")),t.size>$S){let n=`${t.name} has ${Math.ceil(t.size/1048576)} MiB`;return v(e,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await cf(t,o=>v(e,{share:o}));v(e,{share:1,upload:n.file}),await ob(e)}catch(n){v(e,{complaint:n instanceof y?n.message:String(n)})}}async function ob(t){let e=t.questions+1;v(t,{questions:e,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:s}=t;try{let l=await xi({file:n,unit:o,role:i,up:s});e===t.questions&&v(t,{answer:l,is_measuring:!1})}catch(l){if(!(l instanceof y))throw l;if(e!==t.questions)return;let d=o?t.sizes:vS(l.complaint),c=d.length&&!o?void 0:C(l.complaint);v(t,{sizes:d,complaint:c,is_measuring:!1})}}async function bS(t){let{questions:e,upload:n,unit:o,up:i}=t;try{let s=await rf({file:n,unit:o,up:i});e===t.questions&&v(t,{inspection:s})}catch(s){if(!(s instanceof y))throw s;e===t.questions&&v(t,{complaint:C(s.complaint)})}}function wS(t){return t.inspection?r`<h4>Every defect of the mesh</h4>
    ${t.inspection.defects.length?r`<ul>
            ${t.inspection.defects.map(yS)}
          </ul>`:r`<p>None.</p>`}`:r`<button type="button" @click=${()=>{bS(t)}}>List every defect of the mesh</button>`}var yS=({text:t})=>r`<li>${t}</li>`;function vS({asks:t,choices:e=[]}){if(t!=="unit")return[];let n=o=>(o??[]).map(i=>R(i,2)).join(" \xD7 ");return e.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function sp(t,e){v(t,e),ob(t)}function ib(t,e){let n=l=>{let d=l.target;eb(d.files?.[0]),d.value=""},o=l=>{l.preventDefault(),eb(l.dataTransfer?.files[0])},[i,s]=a.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return r` <div class="drop" @dragover=${l=>l.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${s} @change=${n} />
    </div>
    ${a.mesh?kS(a.mesh,t,e):u}`}function kS(t,e,n){let i=(t.sizes.length?t.sizes:[["mm",""],["cm",""],["in",""]]).map(([s,l])=>[s,l?`${s}: ${l} ${s}`:s]);return r` <h3>${t.name}</h3>
    ${t.share<1&&!t.complaint?r`<label for="sent">Sending, ${Math.round(100*t.share)} %</label
            ><progress id="sent" max="1" .value=${t.share}></progress>`:u}
    ${t.is_measuring?r`<p role="status">Measuring ...</p>`:u}
    ${t.upload&&!Xc.test(t.name)?r`<h4 id="unit-title">${t.unit?"Its unit":"Which size is it?"}</h4>
            ${ut("Unit of the file's numbers",t.unit,i,s=>sp(t,{unit:s}))}`:u}
    ${t.complaint?r`<p class="alarm" role="alert">${t.complaint}</p>`:u}
    ${t.upload&&!t.is_measuring&&(t.complaint||t.answer)?wS(t):u}
    ${t.upload&&(t.unit||t.answer)?r`<h4>What it shows</h4>
            ${ut("Role",t.role??t.answer?.gauge.role,np,s=>sp(t,{role:s}))}
            <h4>Which way is up</h4>
            ${ut("Up",t.up??"",op,s=>sp(t,{up:s||void 0}))}`:u}
    ${t.answer?r`${ji(t.answer)} ${xS(t,e,n)}`:u}`}var sb=t=>t.answer.gauge.role!=="cavity"||t.answer.gauge.pockets.length>1;function xS(t,e,n){let o=String(z().name??"").trim(),i=wl(o),s=o&&!i&&!t.is_keeping;return r`${tp()} ${ep(sb(t))} ${ip(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${()=>nb(t,n,e)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${t.is_keeping} @click=${()=>nb(t,n)}>More settings</button>
    </div>
    ${t.is_keeping?r`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function nb(t,e,n){v(t,{is_keeping:!0});try{let o=TS(t,await pf(t.upload,SS(t.name)));if(!n||t.answer.gauge.pockets.length>1&&!await RS(o))return e(o);Di(o,"mesh",it().title),await rr(n),v(t,{complaint:a.mould?.complaint?.line})}catch(o){v(t,{complaint:o instanceof y?o.message:String(o)})}v(t,{is_keeping:!1})}function TS(t,e){let n={file:e,role:t.answer.gauge.role};t.unit&&(n.unit=t.unit),t.up&&(n.up=t.up);let{cavities:o,...i}=z();return{...i,...sb(t)||o===void 0?{}:{cavities:o},mesh:n}}async function RS(t){try{return await jn({file:"new.mould.json",mould:t}),!0}catch(e){if(e instanceof y&&e.status===422)return!1;throw e}}var SS=t=>mi(t.replaceAll(/[^\w.-]+/g,"_"),a.files?.meshes??[]);var xl={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},rb={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function ab(t){vt(),ln();let e={...rb,shape:kl("block")};t==="mesh"?Di(rb,"mesh",xl[t]):Di(t==="water"?{...e,water:Zc}:e,"form",xl[t]),Rl()}async function lb(t,e){ln();let n=await u_(t,e);return n&&Rl(),n}async function Tl(t){ln(),await d_(t)&&Rl()}function AS(t){Di(t,"form","More about this mould"),Rl()}function Rl(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function ub(t){if(!a.mould)return;let{way:e,title:n}=a.mould;return r`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${e==="mesh"?ib(t,AS):Z$(t)}
  </section>`}var rp=()=>f({chosen_mould:void 0});function lr(t,e){vt();let n=a.files?.moulds.find(s=>s.file===t),o=a.catalogue.find(s=>s.path===t),i={file:t,name:n?.name||o?.name||t,note:n?.note??"",shipped:n?.shipped??!0,sell:"",slice:"",told:e};f({chosen_mould:i}),db(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}var DS=2e3;async function db(t){if(t===a.chosen_mould)try{v(t,{answer:await xi({file:t.file})}),v(t,{complaint:void 0})}catch(e){v(t,{complaint:e instanceof y?e.message:String(e)}),e instanceof y&&e.may_pass&&window.setTimeout(()=>{db(t)},DS)}}var PS=t=>a.files?.moulds.find(e=>e.file===t);function cb(t,e){let n=()=>e(async()=>{await lb(t.file,t.shipped)&&rp()});return r`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${t.name} <small>${t.shipped?"built-in":`your own, ${t.file}`}</small>
    </h2>
    ${t.told?r`<p role="status">${t.told}</p>`:u} ${t.note?r`<p>${t.note}</p>`:u}
    ${el(PS(t.file))}
    ${t.complaint?r`<p class="alarm" role="alert">It cannot be measured: ${t.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${t.answer?ji(t.answer):t.complaint?u:r`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${t.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${t.complaint?u:FS(t,e)}
    </div>
  </section>`}var pb=({answer:t})=>(t?.gauge.pockets[0]?.brimful_ml??0)>=Qc;function OS(t){let e=pb(t)?t.slice.trim():"";return kt(e)?`${e} mm`:e||void 0}var MS=t=>r`<div class="field short">
    <label for="mould-slice" data-said="mm">Thickness of a slice</label>
    <input
      id="mould-slice"
      .value=${A(t.slice)}
      @input=${e=>v(t,{slice:e.target.value})}
      autocomplete="off"
      spellcheck="false"
      aria-describedby="mould-slice-said"
    />
    <p class="hint" id="mould-slice-said">Left blank, it is not cut into slices.</p>
  </div>`;function FS(t,e){let n=hl(t.sell),o=OS(t),i=s=>()=>e(()=>Ia({mould:t.file,name:t.name,formula:s,sell:n,slice:o}));return r`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    <div class="row">
      ${gl("mould-sell",t.sell,s=>v(t,{sell:s}))}
      ${pb(t)?MS(t):u}
    </div>
    ${n?u:r`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(a.files?.formulas??[]).map(s=>r`<li>
            <button type="button" ?disabled=${!t.answer||!n} @click=${i(s.file)}>
              <b>${s.name}</b><span>${s.note||s.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function ur(){let{view:t,run:e,order:n,formula_of:o,formulas:i,mould:s,chosen_mould:l,stock:d}=a;if(t!=="reading")return wn(t)?{name:t,file:e.file,of:e}:t==="moulds"&&s?{name:"describing",file:s.open.id,of:s}:t==="moulds"&&l?{name:"chosen",file:l.file,of:l}:t==="order"?{name:t,file:n?.open.file,of:n}:t==="trail"?{name:t,file:d.trail?.of}:t!=="formula"?{name:t}:o==="apart"?{name:"formula",file:i.apart?.file,of:i.apart}:{name:cs[o],file:e.file,of:e}}async function fb({name:t,file:e}){let n=vt();if(!(!(t===cs.apart&&a.formulas.apart?.file===e)&&!await Wa())&&n())try{await BS(t,e)}catch(i){if(!(i instanceof y||i instanceof SyntaxError))throw i;f({view:"runs",list_complaint:i.message})}}async function BS(t,e=""){let n=t;if(wn(n))return mb(e,n);let o=["pour","pipe"].find(i=>cs[i]===t);if(o){await mb(e,"formula"),a.view==="formula"&&ne(o);return}if(t===cs.apart)return Ns(e);if(t==="order")return js(e);if(t==="trail"&&e)return xe(e);await CS(t,e)}async function mb(t,e){t===a.run.file||!t?f({view:a.run.file?e:"runs",typed:void 0}):await On(t,e)}async function CS(t,e){let n=t;rp(),ln(),f({view:ae(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,held_open:void 0,fault:void 0});let o=aa(te).find(i=>i.id===e);t==="describing"&&o&&await Tl(o),t==="chosen"&&lr(e),t==="shelf"&&LS(),IS()}function LS(){Ig(),ro()}async function IS(){try{await ke(),Fa()}catch(t){if(!(t instanceof y))throw t;f({list_complaint:t.message})}}var _e={id:""},Kt,ap=!1,up=new Map,Sl=JSON.parse(sessionStorage.getItem("left")??"{}");function gb(){let t=ur();ap||!t||Kt&&en(Kt)===en(t)||(Al(),_b(t))}function _b(t){let e=!Kt||Kt.name===t.name&&Kt.of!==void 0&&Kt.of===t.of;if(Kt=t,e)return qi();_e={id:crypto.randomUUID(),before:location.hash},up.set(_e.id,t.of),history.pushState(_e,"",en(t)),requestAnimationFrame(ES)}function qi(){Kt&&(_e.id||(_e={id:crypto.randomUUID()}),up.set(_e.id,Kt.of),history.replaceState(_e,"",en(Kt)))}var WS="button, input, select, summary, a[href], [tabindex]",lp=t=>t.id||(t.getAttribute("aria-label")??t.textContent).trim(),$b=t=>[...document.querySelectorAll(`#main :is(${WS})`)].filter(e=>lp(e)===t);function Al(){let t=document.activeElement;!t?.closest("#main")||t.id==="main"?Sl[_e.id]={scroll:scrollY}:Sl[_e.id]={scroll:scrollY,words:lp(t),nth:$b(lp(t)).indexOf(t)}}function ES(){scrollTo(0,0),document.activeElement?.closest("#main")||bb()}function bb(){let t=document.querySelector("#main h1");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}))}function wb(){let{scroll:t,words:e,nth:n=0}=Sl[_e.id]??{scroll:0},o=e===void 0?void 0:$b(e)[n];o?o.focus({preventScroll:!0}):bb(),scrollTo(0,t)}var $e=t=>yb({name:t,file:wn(t)?a.run.file:void 0});async function yb(t){Al(),await dp(t,()=>{let e=ur();e&&!(Kt&&en(Kt)===en(e))&&_b(e)})}async function dp(t,e){ap=!0;try{await fb(t)}finally{ap=!1,e()}}function vb(t){_e.before===en(t)?history.back():yb(t)}var hb=Promise.resolve();function NS(t,e){Al();let n=()=>history.state?.id!==t?.id;hb=hb.then(async()=>{if(!e)return qi();if(n())return;let o=t?up.get(t.id):void 0,i=[a.run,a.formulas.apart,a.order].find(s=>s&&s===o);await dp(i?{...e,file:"open"in i?i.open.file:i.file}:e,()=>{Kt=ur(),!n()&&(_e=t??{id:crypto.randomUUID()},qi(),requestAnimationFrame(wb))})})}function kb(){history.scrollRestoration="manual",addEventListener("popstate",t=>{zm()||NS(t.state,ku(location.hash))}),addEventListener("pagehide",()=>{Al(),sessionStorage.setItem("left",JSON.stringify(Sl))})}async function xb(){let t=ku(location.hash);t&&(_e=history.state??{id:""});let e=vt();await o_(hf(t)),t&&e()&&jS(t)&&await dp(t,()=>{Kt=ur(),qi(),requestAnimationFrame(wb)}),await Yd()}var jS=t=>!Kt||en(Kt)===en(t);function Ui(t=a.plan?"The figures below are out of date.":"No figures yet."){let e=cl()?void 0:a.complaint;return r`<div class="complaints" role="status">
      ${e?r`<p class="alarm">
                <strong>${t}</strong>
                ${Wn(e.field)}${C(e)}
              </p>
              ${e.is_fault?r`<button type="button" @click=${pp}>Ask again</button>`:u}
              ${Ae("run")?sr(a.run.now,e.keep,(n,o)=>X("run",n,o)):cp(e)}
              ${HS()?r`<button type="button" @click=${mp}>Go to the field</button>`:u}`:u}
    </div>
    ${er()}`}function cp({keep:t}){let{studio:e}=a.beside;return e&&Ae("studio")?sr(e.now,t,(n,o)=>X("studio",n,o)):u}function Wn(t){let e=t.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return e.length?`${e.join("").slice(2)}: `:""}function pp(){ct(),a.run.failed&&sn()}function HS(){if(Tb())return!0;let t=dn();return t?document.activeElement!==t:qS()}var qS=()=>a.view!=="set-up"&&Ae("run")&&a.complaint!==void 0&&a.complaint.field!=="",Tb=()=>["pour","pipe"].find(t=>a.complaint?.file&&a.complaint.field&&Ae(t));function mp(){let t=dn(),e=Tb();if(t)return Gt(t);e?ne(e):$e("set-up"),US(()=>Gt(dn()))}function US(t){requestAnimationFrame(()=>requestAnimationFrame(t))}var Rb=()=>[...sa().map(t=>mn(t)),...ia().map(fn)];function Sb(){let t=a.formula_of,e=a.formulas[t];if(!e)return r`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${Rb()}${Ui()}
      <p>Reading the formula ...</p>
      ${hp(t)}`;let n=a.plan&&Wi(a.plan),o=t==="pipe"?n?.whippings[0]:n?.pour;return r`${Rb()}
    <h1 id="formula-title" tabindex="-1">${String(e.now.name||"Unnamed formula")}</h1>
    <p class="aside">${zS(t)}</p>
    <div class="choice">${hp(t)}${t==="apart"?JS():u}</div>
    ${Ei(a.files?.formulas.find(i=>i.file===e.file))} ${KS(t,o,n)} ${Db(t)}
    ${Ic(t)} ${Wc(t,o)} ${Nc(t)} ${Oc(t)}
    <div class="choice">${hp(t)}</div>`}var Ab=t=>[Db(t),Ic(t),Wc(t,void 0),Nc(t),Oc(t)],fp=()=>String(a.run.now.name??a.run.file);function zS(t){let e=a.formulas[t],n=e.shipped?" Built-in: your first change is saved as a copy.":"",o=a.formulas.pour===e&&a.formulas.pipe===e;return t==="apart"?`Opened on its own; the figures are for a base of "${fp()}".${n}`:o?`Base and topping of "${fp()}" are both made of it.${n}`:`${t==="pour"?"Base":"Topping"} of "${fp()}".${n}`}function hp(t){let e=t==="apart";return r`<button type="button" class="strong" @click=${()=>vb(e?{name:"formulas"}:{name:a.came_from,file:a.run.file})}>
    ${e?"Close the formula":"Back to the run"}
  </button>`}function JS(){return r`<button type="button" @click=${()=>{Zd("pour")}}>Use it as the base</button> ${he()?r`<button type="button" @click=${()=>{Zd("pipe")}}>Use it as the topping</button>`:u}`}function KS(t,e,n){return r`<section class="strip" aria-label="What comes of it">
    ${e&&n?r`<dl>
            ${[...VS(t,n),...QS(t,e)].map(([o,i,s])=>r`<div class=${a.is_old?"old":""}>
                  <dt>${o} ${s?po(s):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${GS(t)}
  </section>`}function VS(t,e){let n=t==="pipe"?Tc(e,e.whippings[0]):"";return n?[["For one whipping",n]]:Jt(e.whole)?[["For one batch",Ve(e.whole,e.batch)]]:[]}function QS(t,e){let n=lo(t).length?" \u26A0":"";return[["Fats",P(q(a.units,e.fats_g))],["Superfat as weighed",`${oe(e.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...rl(e).map(({one:o})=>[o.name,P(ti(a.units,o))])]}function GS(t){let e=cl()?void 0:a.complaint;if(!e)return r`<div role="status"></div>
      ${er()}`;let n=Ae(t),o=n&&e.field!==""&&document.activeElement!==dn();return r`<div role="status" class="asks">
      <p class="alarm">
        <strong>${a.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${Wn(e.field)}${C(e)}
      </p>
      ${e.is_fault?r`<button type="button" @click=${pp}>Ask again</button>`:u}
      ${o?r`<button type="button" @click=${()=>dn()?.focus()}>Go to the field</button>`:u}
    </div>
    ${er()}`}function Db(t){return r`<section class="card" aria-label="Name">
    ${h({label:"Name",of:t,at:"/name",wide:!0})}
    ${O({of:t,name:"note",pointers:["/note"],summary:"Your note",body:()=>h({label:"Note",of:t,at:"/note",optional:!0,wide:!0})})}
  </section>`}var gp=t=>v(a.new_formula,t);function Pb(){let{name:t,copied:e}=a.new_formula,n=[...a.files?.formulas??[]].sort((i,s)=>Number(i.shipped)-Number(s.shipped)),o=i=>()=>dt(async()=>{await i(t.trim()),gp({name:"",copied:""})});return r`${Pe("Formulas")}
    <section aria-label="Formulas">
      ${Qe(n,YS)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${A(t)}
            @input=${i=>gp({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!t.trim()} @click=${o(s_)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>gp({copied:i.target.value})}
          >
            <option value="" .selected=${A(e==="")}>choose ...</option>
            ${n.map(i=>r`<option value=${i.file} .selected=${A(i.file===e)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!t.trim()||!e}
          @click=${o(i=>r_(e,i))}
        >
          Make the copy
        </button>
      </div>
      ${t.trim()?"":r`<p class="hint">A new formula needs a name first.</p>`}
    </section>
    ${Oe("formula")}`}function YS(t){let e=t.changed?[`changed ${U(t.changed)}`]:[];return hn({kind:Bo,one:t,facts:e,open:()=>Ns(t.file)})}function ZS(t){ln(),lr(t,`Saved in ${t}.`)}function Ob(){let{chosen_mould:t}=a;return r`${Pe("Moulds")}
  ${t?cb(t,dt):ub(ZS)??r`${n1()} ${XS()}`}`}function XS(){let t=(a.files?.moulds??[]).filter(n=>!n.shipped),e=a.catalogue.map(n=>({file:n.path,name:n.name,note:"",shipped:!0}));return r`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${Qe([...t,...e],t1)} ${Oe("mould")}
  </section>`}function t1(t){let e=t.shipped?e1(t.file):s1(t.file),n=()=>Promise.resolve(lr(t.file));return hn({kind:te,one:t,facts:e,picture:t.file,open:n})}var e1=t=>a.catalogue.filter(e=>e.path===t).map(e=>`${P(Ct(a.units,e.brimful_ml))}, ${K(e.cavities,"cavity","cavities")}; ${e.description}`);function n1(){return r`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${o1()}
    <div class="choice">
      ${Object.entries(xl).map(([t,e])=>r`<button type="button" @click=${()=>ab(t)}>${e}</button>`)}
    </div>
  </section>`}function o1(){return aa(te).map(t=>{let e=String(wt(t.text)?.name??"").trim()||i1(t)||"a mould without a name yet";return r`<div class="banner">
      <p>Your unsaved mould <b>${e}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>dt(()=>Tl(t))}>Continue</button>
        <button type="button" @click=${()=>{Jn(te,t.id),G()}}>Discard it</button>
      </div>
    </div>`})}var i1=({file:t})=>a.files?.moulds.find(e=>e.file===t)?.name;function s1(t){let e=Jd(t);return e?"complaint"in e?[`it cannot be measured: ${e.complaint}`]:[P(Ct(a.units,e.brimful_ml)),K(e.cavities,"cavity","cavities")]:["measuring ..."]}var r1=300,a1=1e3;function Dl(){let{quoted:t,plan:e,quote_wish:n,is_old:o}=a,i=t?.of===e&&t?.wish===n;!i&&!o&&l1();let s=i?t?.complaint:void 0;return{quote:t?.quote,complaint:s,is_old:o||!i||s!==void 0}}function $p(){a.quoted&&f({quoted:{...a.quoted,of:void 0}})}var dr,_p=!1;function l1(){let{plan:t,quote_wish:e}=a;_p||dr?.of===t&&dr?.wish===e||(window.clearTimeout(dr?.timer),dr={of:t,wish:e,timer:window.setTimeout(()=>{d1()},a.quoted?r1:0)})}var Pl=t=>t.split(/[\s,;]+|\band\b/).filter(Boolean).join(",");function Mb(t,{numbers:e="",by:n,figure:o}){let i=Pl(e);return{...t,...i&&{sell:i},...n&&o.trim()&&{[n]:o}}}var Ol=()=>Mb({file:a.run.file,run:a.run.now},a.quote_wish);function u1(t,{numbers:e=""}){return t.field==="/sell"&&Pl(e)?{...t,file:"",field:"sell"}:t}async function d1(){dr=void 0;let{run:t,plan:e,planned:n,quote_wish:o,is_old:i}=a;if(!(!e||!n||i)){_p=!0;try{let s=await nf(Mb(n,o));t===a.run&&f({quoted:{of:e,wish:o,quote:s}})}catch(s){if(!(s instanceof y))throw s;if(t!==a.run)return;let l=u1(s.complaint,o);f({quoted:{of:e,wish:o,quote:a.quoted?.quote,complaint:l}}),s.may_pass&&window.setTimeout($p,a1)}finally{_p=!1}}}var c1=300,p1=1e3,wp=t=>{let{by:e,figure:n}=a.quote_wish;return[t.open.now,t.open.file,t.times,e,n,a.plan,No()]},Fb=(t,e)=>t!==void 0&&t.every((n,o)=>n===e[o]);function Bb(){let t=qt(),{quoted:e}=t;if(!Rn(t.open.now)||t.open.theirs)return{is_old:!0};let n=Fb(e?.of,wp(t));!n&&!a.is_old&&m1(t);let o=n?e?.complaint:void 0;return{quote:e?.quote,complaint:o,is_old:a.is_old||!n||o!==void 0}}function yp(){let{quoted:t}=qt();t&&v(qt(),{quoted:{...t,of:[]}})}function vp({open:t,times:e}){let{by:n,figure:o}=a.quote_wish,i=Pl(e);return{file:t.file,order:t.now,...i&&{times:i},...n&&o.trim()&&{[n]:o}}}var Ml,bp=!1;function m1(t){let e=wp(t);bp||Fb(Ml?.of,e)||(window.clearTimeout(Ml?.timer),Ml={of:e,timer:window.setTimeout(()=>{f1(t)},t.quoted?c1:0)})}async function f1(t){if(Ml=void 0,t===a.order){bp=!0;try{if(await rn(),await We(),await gi(),!Rn(t.open.now))return;let e=wp(t);await h1(t,e)}catch(e){if(!(e instanceof y))throw e}finally{bp=!1,v(t,{})}}}async function h1(t,e){try{v(t,{quoted:{of:e,quote:await of(vp(t))}})}catch(n){if(!(n instanceof y))throw n;v(t,{quoted:{of:e,quote:t.quoted?.quote,complaint:n.complaint}}),n.may_pass&&window.setTimeout(()=>t===a.order&&yp(),p1)}}var zi={of:"order",at:"/lines",in_order:!0,stays:!0};function Cb(){return r`<section class="card" aria-label="The order">
    <div class="row">
      ${h({of:"order",label:"For",at:"/for",optional:!0})}
      ${h({of:"order",label:"Due",at:"/due",date:!0,optional:!0,short:!0})}
      ${h({of:"order",label:"Note",at:"/note",optional:!0})}
    </div>
    <h2>What is ordered</h2>
    ${E("order","/lines")} ${k(zi).map((t,e)=>g1(e))} ${_1()}
  </section>`}var Lb=()=>(a.files?.runs??[]).filter(({shipped:t})=>!t);function Ib(t){let e=kn(qt().open.file,t);return a.files?.runs.find(n=>n.file===e)}var Wb=t=>Ib(t)?.name||t;function Eb(t){let e=Qn(qt().open.now).map(({run:n})=>n);return Lb().filter(({file:n})=>n===t||!e.includes(n)).map(n=>[n.file,n.name||n.file])}function g1(t){let{run:e}=Qn(qt().open.now)[t]??{run:""},n=`/lines/${t}`,o=Ib(e)?.pieces,i=e?Wb(e):`line ${t+1}`;return r`<div class="row" id=${W(zi,t)} role="group" aria-label=${i}>
    ${$t({of:"order",label:"Run",at:`${n}/run`,answers:Eb(e),unsaid:"choose ..."})}
    ${h({of:"order",label:"Pieces",at:`${n}/pieces`,count:!0,short:!0,hint:o===void 0?void 0:`The run itself: ${K(o,"piece")}`})}
    ${k(zi).length>1?h({of:"order",label:"Poured with others",at:`${n}/together`,optional:!0,short:!0,hint:"Lines with one word, such as A, share one base."}):u}
    ${J(zi,t,i)}
  </div>`}function _1(){let t=Eb();return Lb().length?t.length?r`<div class="row">
    ${$t({of:"order",label:k(zi).length?"Another run":"The run that is ordered",at:"/lines/-",answers:t,unsaid:"choose ...",optional:!0,chosen:"",take:e=>e&&H(zi,{run:e},Wb(e))})}
  </div>`:r`${u}`:r`<p class="hint">
      An order is of runs of your own, and there is none yet: make one, or copy an example.
    </p>`}var $1=300,b1=1e3,Nb=()=>new Date().toDateString(),w1=()=>({file:a.run.file,run:a.run.now});function y1(){let{run:t,plan:e}=a;return{known:a.run_days,rests_on:()=>[a.plan,Nb()],is_ready:e!==void 0&&!a.is_old,written:()=>Promise.resolve(),question:()=>a.planned??w1(),is_open:()=>t===a.run,keep:n=>f({run_days:n})}}function v1(){let{order:t}=a;if(!t)return;let{open:e}=t;return{known:t.days,rests_on:()=>[e.now,e.file,a.plan,No(),Nb()],is_ready:Rn(e.now)&&!e.theirs&&!a.is_old,written:async()=>{await rn(),await We(),await gi()},question:()=>({file:e.file,order:e.now}),is_open:()=>t===a.order,keep:n=>v(t,{days:n})}}var Fl=t=>t==="run"?y1():v1(),jb=t=>Fl(t).question(),Hb=(t,e)=>t!==void 0&&t.length===e.length&&t.every((n,o)=>n===e[o]);function Bl(t){let e=Fl(t);if(!e)return{is_old:!0};let{known:n,is_ready:o}=e,i=Hb(n?.of,e.rests_on());!i&&o&&k1(t,e);let s=i?n?.complaint:void 0;return{days:n?.days,complaint:s,is_old:!o||!i||s!==void 0}}function Tp(t){let e=Fl(t);e?.known&&e.keep({...e.known,of:[]})}var kp=new Map,xp=new Set;function k1(t,e){let n=e.rests_on(),o=kp.get(t);xp.has(t)||Hb(o?.of,n)||(window.clearTimeout(o?.timer),kp.set(t,{of:n,timer:window.setTimeout(()=>{x1(t)},e.known?$1:0)}))}async function x1(t){kp.delete(t);let e=Fl(t);if(e?.is_ready){xp.add(t);try{await e.written(),await T1(t,e)}catch(n){if(!(n instanceof y))throw n}finally{xp.delete(t),f({})}}}async function T1(t,{known:e,rests_on:n,question:o,is_open:i,keep:s}){let l=n();try{let d=await sf(o());i()&&s({of:l,days:d})}catch(d){if(!(d instanceof y))throw d;if(!i())return;s({of:l,days:e?.days,complaint:d.complaint}),d.may_pass&&window.setTimeout(()=>i()&&Tp(t),b1)}}var Pp=864e5,_o=t=>Math.round(Date.parse(`${t}T00:00Z`)/Pp),qb=t=>new Date(t*Pp).toISOString().slice(0,10),R1=t=>new Date(t*Pp).getUTCDay()===1,Sp=40,Ap=18,S1=7,Dp=class{#n;#t;constructor({calendar:e}){this.#n=_o(e[0].day),this.#t=e.length}at=(e,n=0)=>`${this.#e(_o(e)+n)}%`;wide=e=>`${(100*e/this.#t).toFixed(3)}%`;#e=e=>(100*(e-this.#n)/this.#t).toFixed(3);mondays(){let e=Array.from({length:this.#t},(n,o)=>this.#n+o).filter(R1);return e.filter((n,o)=>o%Math.ceil(e.length/S1)===0).map(qb)}is_at_end=e=>_o(e)-this.#n>.88*this.#t};function Ub(t){let e=new Dp(t),{calendar:n}=t;return r`<figure class="day-strip">
    <p class="aside">${St(n[0].day)} to ${St(n.at(-1).day)}</p>
    ${Rp(t,e,20,O1(e))}
    <p>Hours of your making days</p>
    ${Rp(t,e,Sp+2,M1(t,e))}
    ${t.batches.map(o=>r`<p>${I1(t,o)}</p>
          ${Rp(t,e,Ap+6,F1(t,e,o))}`)}
    <figcaption>${E1(t)}</figcaption>
  </figure>`}var Rp=(t,e,n,o)=>r`<svg width="100%" height=${n} aria-hidden="true">
    ${S`${A1} ${P1(t,e)}
      ${e.mondays().map(i=>S`<line class="week" x1=${e.at(i)} x2=${e.at(i)} y1="0" y2="100%" />`)}
      ${o}
      ${D1(t).map(i=>S`<line class="due" x1=${e.at(i)} x2=${e.at(i)} y1="0" y2="100%" />`)}`}
  </svg>`,A1=S`<defs>
  <pattern id="day-mould" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M0 0L8 8M8 0L0 8" /></pattern>
  <pattern id="day-cure" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="3" cy="3" r="1" /></pattern>
  <pattern id="day-off" width="7" height="7" patternUnits="userSpaceOnUse"><path d="M0 7L7 0" /></pattern>
</defs>`,D1=({days:t})=>t.filter(({acts:e})=>e.some(({act:n})=>n==="due")).map(({day:e})=>e),P1=({calendar:t},e)=>t.filter(({off:n})=>n).map(({day:n})=>S`<rect class="off" x=${e.at(n)} width=${e.wide(1)} height="100%" />`),O1=t=>t.mondays().filter(e=>!t.is_at_end(e)).map((e,n)=>S`<text class=${n%2?"between":""} x=${t.at(e)} dx="3" y="14">${C_(e)}</text>`);function M1({calendar:t},e){let n=Math.max(...t.map(({hours_min:i})=>i)),o=(i,s,l)=>{let d=Sp*l/n;return S`<rect class=${i} x=${e.at(s,.1)} width=${e.wide(.8)} y=${1+Sp-d} height=${d} />`};return t.filter(({hours_min:i})=>i>0).map(({day:i,hours_min:s,used_min:l})=>S`${o("free",i,s)} ${o("used",i,l)}`)}function F1(t,e,n){let{poured:o,unmoulded:i,cured:s}=n,l=(p,m,_)=>{let b=_o(_)-_o(m);return S`<rect class=${p} x=${e.at(m)} y="3" width=${e.wide(b)} height=${Ap} />`},d=o===i,c=(p,m)=>L1(t,p,n).map(_=>S`<circle class=${p} cx=${e.at(_,.5)} cy=${3+Ap/2} r=${m} />`);return S`${l("mould",o,d?qb(_o(o)+1):i)}
    ${_o(i)<_o(s)?l("cure",i,s):u}
    ${c("chill",7)} ${c("cast",3.5)}`}var B1=({of:t,runs:e,batches:n},o)=>t===o.of&&e.join()===o.runs.join()&&n.includes(o.batch),C1=({lyes:t},e)=>t.filter(({batches:n})=>n.some(({of:o,runs:i,batch:s})=>o===e.of&&i.join()===e.runs.join()&&s===e.batch)).map(({made:n})=>n);function L1(t,e,n){let o=t.days.filter(({acts:i})=>i.some(s=>s.act===e&&B1(s,n)));return[...new Set([...o.map(({day:i})=>i),...e==="chill"?C1(t,n):[]])]}function I1({asked:t,batches:e},n){let o=({of:l,runs:d})=>l===n.of&&d.join()===n.runs.join(),i=t[n.of].lines.find(({runs:l})=>l.join()===n.runs.join())?.name??"",s=e.filter(o).length;return`${i}${s>1?`, batch ${n.batch} of ${s}`:""}: ${n.pieces} ${n.pieces===1?"piece":"pieces"}`}var W1=(t,e)=>r`<span><svg width="26" height="20" aria-hidden="true">${t}</svg> ${e}</span>`,cr=t=>S`<rect class=${t} x="1" y="1" width="24" height="18" />`;function E1({calendar:t,days:e}){let n=i=>e.some(({acts:s})=>s.some(({act:l})=>l===i));return[[!0,cr("used"),"hours used"],[!0,cr("free"),"hours free"],[!0,cr("mould"),"in the mould"],[!0,cr("cure"),"curing"],[t.some(({off:i})=>i),cr("off"),"day off"],[n("cast"),S`<circle class="cast" cx="13" cy="10" r="3.5" />`,"decorations cast"],[n("chill"),S`<circle class="chill" cx="13" cy="10" r="7" />`,"weighed out the evening before"],[!0,S`<line class="due" x1="13" x2="13" y1="0" y2="100%" />`,"ready to hand over"]].filter(([i])=>i).map(([,i,s])=>W1(i,s))}var ei=t=>["/work",t].join("/");function Cl(t=!1){let e=(n,o,i,s=!1)=>h({of:"studio",label:o,at:ei(n),unit:i,optional:!0,takes_part:!0,is_due:s,short:!0});return[e("each_batch","Each batch","min",t),e("each_piece_made","Each piece made","s"),e("each_tray_fill","Each tray fill","min"),e("each_piece_packed","Each piece packed","s")]}var N1=({cautions:t})=>t.filter(({severity:e})=>e!=="danger").map(({severity:e,text:n})=>e==="note"?r`<p>${At(n)}</p>`:r`<p class="minded"><strong>Caution</strong> ${At(n)}</p>`),pr=(t,e,n="")=>r`<tr>
    <th scope="row">${t}</th>
    <td><b>${P(e)}</b></td>
    <td>${n}</td>
  </tr>`;function j1(t){let{units:e}=a,{made:n,for:o,lye_of:i,pot:s}=t,l=s.full_pot_g===null?"":`with its pot ${P(nt(e,{g:s.full_pot_g,g_text:s.full_pot_g_text,oz_text:s.full_pot_oz_text}))}`;return r`<h3>One pot of lye solution, made on the evening of ${St(n)}</h3>
    <p>
      For ${i==="topping"?"the toppings of ":""}${At(o)};
      ${R(s.strength_percent,1)} % strong. In place of the lye in the plan of each.
    </p>
    <table class="figures">
      <tbody>
        ${pr("Water, distilled",nt(e,ht(s,"water_")))}
        ${s.alkalis.map(d=>pr(d.name,nt(e,ht(d,""),"down")))}
        ${pr("Lye solution in the pot",nt(e,ht(s,"lye_")),l)}
        ${s.shares.map(d=>r`${pr(`Out of it for ${d.batter}`,nt(e,ht(d,"lye_"),"down"),`superfat then ${oe(d.superfat_percent)}`)}
            ${d.top_up_g>0?pr(`and plain water to ${d.batter}`,nt(e,ht(d,"top_up_"))):u}`)}
      </tbody>
    </table>
    ${N1(t)}`}var zb=({lyes:t})=>t.map(j1),Jb=({lyes:t,notes:e})=>[...new Set([...t.flatMap(({cautions:n})=>n),...e].filter(({severity:n})=>n==="danger").map(({text:n})=>n))];var ni=t=>v(a.printing,t);function Kb(t,e){let n=document.createElement("a");n.href=t,e(n),n.click()}async function Vb(t){if(!a.printing.is_working){ni({is_working:!0,told:"Making it ...",on:a.view});try{await H1(),ni({told:await t()})}catch(e){ni({told:e instanceof Error?e.message:String(e)})}ni({is_working:!1})}}async function H1(){await rn(),await We();let t=a.view==="order"?a.order?.open:void 0,e=Tn("run")??(t?.theirs&&t);if(e)throw new Error(`${e.file} was changed outside this page: choose first which version to keep.`)}var $o=()=>a.printing.on===a.view?a.printing.told:"",ie=(t,e)=>()=>Vb(async()=>{let n=URL.createObjectURL(await tn(e));return Kb(n,o=>o.download=t),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${t} is in your downloads.`}),q1=t=>()=>Vb(async()=>(Kb(await df(t),e=>Object.assign(e,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),U1=t=>{ni({paper:t}),localStorage.setItem("paper",t)},Ll=()=>ut("Paper",a.printing.paper,[["A4","A4"],["Letter","Letter"]],U1),Zt=(t,e,n="",o=!1)=>r`<button
    type="button"
    class=${n}
    ?disabled=${a.printing.is_working||o}
    @click=${()=>{e()}}
  >
    ${t}
  </button>`,_n=({words:t,kind:e,file:n,of:o,is_asleep:i},s="")=>r`${Zt(`${t}, to print`,q1({kind:e,...o}),s,i)}
  ${a.files?.makes_pdf?Zt(`${t}, PDF`,ie(`${n}.pdf`,{kind:`${e}-pdf`,...o}),"",i):""}`,bo=t=>t.split("/").at(-1).replace(/(\.(run|order))?\.json$/,"");var $n={run:"/money/currency",studio:"/currency"},Il={run:"/money/prices",studio:"/prices"},Ge=()=>cn($n)!==void 0;function Ji(){let[t,e]=[g("run",$n.run),g("studio",$n.studio)];return t!==void 0&&e!==void 0&&t!==e?[]:[$n,Il]}var Wl=()=>D("studio",$n.studio)||String(cn($n)??"");async function Qb(t,e=""){if(t==="run"||!a.order)return;let{open:n}=a.order,o=Qn(n.now).map(({run:s})=>kn(n.file,s)),i=o.find(s=>El(s,e))??o[0];(!o.includes(a.run.file)||o.some(s=>El(s,e)))&&await On(i,"set-up")}var El=(t,e)=>t!==""&&(t===e||e.endsWith(`/${t}`)),Gb=t=>{requestAnimationFrame(()=>requestAnimationFrame(t))};function mr(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/"))){let o=document.getElementById(V(t,n));if(o)return o}}var Yb=(t,e)=>{lt("set-up studio"),zt("studio",t),$e("set-up"),Gb(()=>Gt(mr("studio",e)))};async function Zb(t){await Qb(t),rt()||await ha(),Yb("days","/days/making/monday")}var z1=["order","run","pour","pipe","studio"];async function Op(t,{file:e,field:n}){if(t==="order"&&El(a.order.open.file,e))return Gt(mr("order",n));await Qb(t,e);let o=z1.find(i=>El(to(i)?.file??"",e));if(o==="pour"||o==="pipe")ne(o);else{if(o==="studio")return Yb(n.startsWith("/work")&&Ge()?"money work":"days",n);if(mr("run",n))return Gt(mr("run",n));$e("set-up")}Gb(()=>Gt(mr(o??"run",n)))}function Nl(t){let{days:e,complaint:n,is_old:o}=Bl(t);return r`<section class="piece days" aria-labelledby="days-title">
    <h2 id="days-title">When it is made</h2>
    ${n?J1(t,n):u}
    ${e?r`<div class=${o?"old":""}>${K1(t,e)}</div>
            ${iA(t,o)}`:n?u:r`<p class="hint" role="status">Asking when it is made ...</p>`}
  </section>`}function J1(t,e){let{field:n,is_fault:o}=e;return o?r`<p class="alarm" role="status">${C(e)}</p>
      <button type="button" @click=${()=>Tp(t)}>Ask again</button>`:["/days","/days/making"].includes(n)||t==="run"&&!rt()?r`<p role="status">
        Your making days are not known yet: say on which weekdays you make soap, and for how long.
      </p>
      <button type="button" class="strong" @click=${()=>{Zb(t)}}>To my making days</button>`:["/work",ei("each_batch")].includes(n)?r`<p role="status">
        How long a batch takes you is not known yet, and so not how many of them a day holds.
      </p>
      <button
        type="button"
        class="strong"
        @click=${()=>{Op(t,{...e,field:ei("each_batch")})}}
      >
        To the time of a batch
      </button>`:r`<p class="alarm" role="status">${Wn(n)}${At(C(e))}</p>
    ${n?r`<button type="button" @click=${()=>{Op(t,e)}}>Go to the field</button>`:u}`}var K1=(t,e)=>r`${nA(e)} ${V1(t,e)} ${Ub(e)} ${Y1(t,e)} ${zb(e)} ${tA(e)}
  ${eA(e)} ${oA(e)}`,Mp=(t,e,n)=>r`<small>${t?e:n}</small>`;function V1(t,e){let{kept:n,promise:o,promise_proved:i,from:s}=e;return n===null?r`<p class="when">
        Begun today, ${St(s)}, promise it for <b>${St(o)}</b>.
        ${Mp(i,"No earlier day can be kept.","The search ended here: an earlier day may be possible.")}
      </p>
      <button type="button" @click=${()=>Gt(document.getElementById(V(t,"/due")))}>
        Give it a due day
      </button>`:n?Q1(e):G1(e)}function Q1({asked:t,latest_start:e,latest_start_proved:n,promise:o,promise_proved:i}){let[{due:s,pieces:l,last_making_day:d}]=t;return r`<p class="when">
      Begin on <b>${St(e)}</b> at the latest to have ${K(l,"piece")} by
      <b>${St(s)}</b>.
      ${Mp(n,"A later start does not keep it.","The search ended here: a later start may be possible.")}
    </p>
    ${d?r`<p>The last day to pour any of it is ${St(d)}.</p>`:u}
    <p>
      Begun today, all of it can be ready by ${St(o)}.
      ${i?u:r`<small>The search ended here: an earlier day may be possible.</small>`}
    </p>`}function G1({asked:t,in_time_proved:e}){let n=({pieces:o,in_time:i,due:s,rest_on:l})=>i?r`${i} of ${K(o,"piece")} by ${St(s)}, the rest on <b>${St(l)}</b>.`:r`none of the ${K(o,"piece")} by ${St(s)}, all of them on <b>${St(l)}</b>.`;return r`${t.filter(({kept:o})=>o===!1).map(o=>r`<p class="alarm when">
            <strong><span aria-hidden="true">⚠</span> The due day cannot be kept:</strong> ${n(o)}
          </p>`)}
    <p>
      ${Mp(e,"No more can be in time, and the rest is ready no earlier.","The search ended here: more may be possible.")}
    </p>`}var Y1=(t,{days:e})=>r`<details ?open=${t==="run"}>
    <summary>Day by day</summary>
    <ol class="by-day">
      ${e.map(n=>r`<li>
            <h3>${St(n.day)} <small>${Z1(n)}</small></h3>
            <ul>
              ${n.acts.map(X1)}
            </ul>
          </li>`)}
    </ol>
  </details>`,Z1=({hours_min:t,used_min:e,off:n})=>n?"day off":t&&e?`${za(e)} of ${za(t)}`:"",X1=({text:t,min:e,caution:n})=>r`<li>
    ${At(t)}${e?r` <small>${za(e)}</small>`:u}
    ${n?r`<p class="minded"><strong>Caution</strong> ${n}</p>`:u}
  </li>`;function tA({what_if:t,kept:e}){if(!t.length)return r`<h3>What sets the date</h3>
      <p>No wider limit that was tried makes it earlier: the time to cure and to pack does.</p>`;let n=({keeps_due:o,latest_start:i,promise:s,proved:l})=>[o&&!e?"keeps the due day, ":"",o?`begin on ${St(i)} at the latest`:`ready by ${St(s)}`,l?"":" (the search ended there)"].join("");return r`<h3>${e===!1?"What would help":"What limits it"}</h3>
    <p class="hint">Each was planned with that change alone.</p>
    <ul class="limits">
      ${t.map(o=>r`<li>${o.text}: <b>${n(o)}</b></li>`)}
    </ul>`}function eA({extras:t}){return t.length?r`<h3>From base that is left over</h3>
    <p class="hint">Not counted above.</p>
    <ul class="limits">
      ${t.map(({run:e,batch:n,mould:o,cavities:i})=>r`<li>Batch ${n} of ${e} fills ${K(i,"cavity","cavities")} of ${o}</li>`)}
    </ul>`:u}function nA(t){let e=Jb(t);return e.length?r`<div class="dangers">
    ${e.map(n=>r`<p class="danger"><strong>${pe}</strong> ${At(n)}</p>`)}
  </div>`:u}function oA({notes:t}){let e=t.filter(({severity:o})=>o!=="danger"),n=({severity:o,text:i})=>o==="note"?r`<p>${At(i)}</p>`:r`<p class="minded"><strong>Caution</strong> ${At(i)}</p>`;return e.length?r`<h3>To mind</h3>
        ${e.map(n)}`:u}function iA(t,e){let n=jb(t),o=bo(n.file),i={plan:n,paper:a.printing.paper,"with-days":!0};return r`<section class="on-paper" aria-labelledby="days-papers">
    <h3 id="days-papers">In a calendar, on paper</h3>
    <div class="choice">
      ${Zt("Calendar file (.ics)",ie(`${o} days.ics`,{kind:"calendar",days:n}),"",e)}
      ${_n({words:"Days and bench sheet",kind:"sheet",file:`${o} days and sheet`,of:i,is_asleep:e})}
      ${Zt("Table of the days (.csv)",ie(`${o} days.csv`,{kind:"days-csv",days:n}),"",e)}
    </div>
    <p class="hint">Taken into a calendar again, its entries move with the days.</p>
    <p role="status">${$o()}</p>
  </section>`}var oi=t=>(e,n,o="")=>r`<tr class=${o}>
      <th scope="row">${e}</th>
      ${t.map(i=>r`<td><b>${n(i)}</b></td>`)}
    </tr>`,fr=(t,e)=>r`<tr class="group">
    <th scope="rowgroup" colspan=${e.length+1}>${t}</th>
  </tr>`;function hr(t,e,n,o){let i=`quote ${e}`,s=a.open.has(i),l=`quote-${e.replaceAll(/\W/g,"-")}`,d=r`<button
    type="button"
    class="line"
    aria-expanded=${s?"true":"false"}
    aria-controls=${s?l:u}
    @click=${()=>Bt("open",i)}
  >
    ${e}<span class="how" aria-hidden="true">${s?"\u2013":"="}</span>
  </button>`;return r`${oi(t)(d,n)}
  ${s?r`<tr class="opened">
          <td colspan=${t.length+1} id=${l}>${t.map(o)}</td>
        </tr>`:u}`}var gr=(t,e)=>r`<div class="sum">
    <table>
      <caption>
        ${t}
      </caption>
      <tbody>
        ${e}
      </tbody>
    </table>
  </div>`;function jl({parts:t,items:e},n){let o=t.find(i=>i.part===n);return o?e.some(i=>i.part===n&&i.cost!==null&&!i.from_tap)?o.each:"unpriced":"\u2013"}var Hl=(t,{items:e},n)=>gr(t,e.filter(o=>o.part===n).map(({name:o,amount:i,cost:s,how:l})=>r`<tr>
            <th scope="row">${o}</th>
            <td>${s??"unpriced"}</td>
            <td>${l||i}</td>
          </tr>`)),ql=(t,e)=>hr(t,"To lay out now, in whole packs",({cash:n})=>n?.total??"nothing",n=>r`${sA(e(n),n.cash)} ${rA(n.cash)}`),sA=(t,e)=>r`${gr(`Packs to buy, ${t}`,(e?.packs??[]).map(({shown_as:n,count:o,holds:i,sum:s,seller:l})=>r`<tr>
          <th scope="row">${n}</th>
          <td>${s}</td>
          <td>${o} × ${i}${l?`, ${l}`:""}</td>
        </tr>`))}
  ${e?.unpriced.length?r`<p class="alarm">No pack is listed, and not in the sum: ${e.unpriced.join(", ")}.</p>`:u}
  ${e&&!e.proved_cheapest?r`<p class="hint">Not proved to be the least that is possible.</p>`:u}`,rA=t=>gr("Left of them when all is made",(t?.left??[]).map(({shown_as:e,left:n})=>r`<tr>
          <th scope="row">${e}</th>
          <td>${n}</td>
        </tr>`));function _r(t){let e=t.flatMap(({prices:n})=>n);return e.filter((n,o)=>e.findIndex(({way:i})=>i===n.way)===o)}var Xb=t=>`${R(t,1)} %`;function aA(t){return"margin_percent"in t?`margin ${R(t.margin_percent,2)} %`:"markup_percent"in t?`markup ${R(t.markup_percent,2)} %`:"price as set"}var Fp=(t,e)=>({prices:n})=>{let o=n.find(i=>i.way===t);return o?e(o):"\u2013"};function Ul(t,e,{way:n,by:o,ask:i,with_tax:s},l,d=u){let c=i===s,p=oi(t),m=b=>Fp(n,b),_=(b,w)=>l?r`${w} ${po(b)}`:w;return r`<tbody>
    ${fr(r`<span class="way">${n}</span>, ${aA(o)}`,t)} ${d}
    ${p(e?c?"Ask, with tax":"Ask, without tax":"Ask",m(Bp),"ask")}
    ${e?p("tax in it",m(({tax:b})=>c?b:"none")):u}
    ${p("fees",m(({fees:b})=>b))}
    ${p("left for you",m(({profit:b})=>b))}
    ${p(_("margin","margin, of the price"),m(b=>Xb(b.margin_percent)))}
    ${p(_("markup","markup, on the cost"),m(b=>Xb(b.markup_percent)))}
  </tbody>`}var Bp=({ask:t,is_below_cost:e})=>e?r`<span class="below">${t}<small>below cost</small></span>`:t;function zl(t,e){let n=o=>t.filter(({prices:i})=>i.some(s=>s.way===o&&s.is_below_cost));return _r(t).map(({way:o})=>({way:o,sold:n(o)})).filter(({sold:o})=>o.length).map(({way:o,sold:i})=>r`<p class="alarm below-cost">
          <strong><span aria-hidden="true">⚠</span> Below cost</strong> ${o}: ${e(i)}
        </p>`)}var Cp=t=>t===1?"once":`${t} times`;function tw({times:t,currency:e,has_tax:n},o){let i=oi(t);return r`<p class="aside">Money in ${e}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices of the order">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">The order, made</th>
            ${t.map(s=>r`<th scope="col"><b>${Cp(s.times)}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("pieces",({pieces:s})=>s)}
        </tbody>
        <tbody>
          ${fr("It costs",t)} ${t[0].lines.map((s,l)=>lA(t,l))}
          ${i("The whole order",({cost:s})=>s,"sum-of")}
        </tbody>
        <tbody>
          ${ql(t,s=>`made ${Cp(s.times)}`)}
        </tbody>
        ${_r(t).map((s,l)=>Ul(t,n,s,l===0,cA(t,s.way)))}
      </table>
    </div>`}var Lp=({run:t,sell:e})=>`${t??""}, ${e} ${e===1?"piece":"pieces"}`,lA=(t,e)=>hr(t,Lp(t[0].lines[e]),({lines:n})=>n[e].cost,({lines:n})=>r`${uA(n[e])} ${n[e].parts.map(({part:o})=>dA(n[e],o))}`),uA=t=>gr(`A piece of ${Lp(t)}, ${t.make} made`,[...t.parts.map(({part:e})=>[e,jl(t,e)]),["Cost of a piece",t.cost_each]].map(([e,n])=>r`<tr>
          <th scope="row">${e}</th>
          <td>${n}</td>
        </tr>`)),dA=(t,e)=>Hl(`${e} of all of them, ${Lp(t)}`,t,e),cA=(t,e)=>t[0].lines.map(({run:n},o)=>oi(t)(`${n??""}, a piece`,({lines:i})=>Fp(e,Bp)(i[o]))),ew=({times:t})=>zl(t,e=>`the order loses money, made ${e.map(n=>Cp(n.times)).join(", ")}.`);function nw({times:t}){let e=t.flatMap(({together:o})=>o.flatMap(({cautions:i})=>i)),n=t.flatMap(({lines:o})=>o.flatMap(({run:i,dangers:s})=>s.map(l=>`${i??""}: ${l}`)));return n.push(...e.filter(({severity:o})=>o==="danger").map(({text:o})=>o)),n.length?r`<div class="dangers">
    ${[...new Set(n)].map(o=>r`<p class="danger"><strong>${pe}</strong> ${o}</p>`)}
  </div>`:u}function ow({times:t,remarks:e=[]}){let[{together:n,lines:o}]=t,i=n.flatMap(({cautions:s})=>s).filter(({severity:s})=>s!=="danger");return!n.length&&!e.length?u:r`<ul class="limits">
    ${n.map(s=>r`<li>
          <b
            >Poured together (${s.word}): ${jt(s.lines.map(l=>o[l].run??""))} from one base,
            "${s.formula}", ${P(q(a.units,s.make_g))} in
            ${K(s.batches.reduce((l,{count:d})=>l+d,0),"batch","batches")}.</b
          >
        </li>`)}
    ${i.map(({text:s})=>r`<li>${s}</li>`)} ${e.map(s=>r`<li>${s}</li>`)}
  </ul>`}function pA(t){return t.length<2?t[0]?.way:t.find(({way:e})=>e===a.printing.way)?.way}function Jl({file:t,question:e,prices:n,is_old:o}){let i=bo(t),s=pA(n),l={quote:n.length>1&&s?{...e,way:s}:e},d=n.map(p=>[p.way,p.way]),c={buy:{files:[t]}};return r`<section class="on-paper" aria-labelledby="quote-papers">
    <h3 id="quote-papers">On paper</h3>
    ${d.length>1?r`<p class="question">The price that is offered</p>
            ${ut("The price that is offered",s,d,p=>v(a.printing,{way:p}))}`:u}
    <div class="choice">
      ${n.length?_n({words:"Offer",kind:"offer",file:`${i} offer`,of:l,is_asleep:o||!s}):u}
      ${_n({words:"All of it, for you",kind:"quote",file:`${i} costs`,of:{quote:e}})}
      ${a.files?.studios.length?r`${_n({words:"Shopping list",kind:"list",file:`${i} to buy`,of:c})}
            ${Zt("Shopping list, table",ie(`${i} to buy.csv`,{kind:"list-csv",...c}))}`:u}
    </div>
    ${n.length?s?u:r`<p class="hint">An offer has one price: choose which.</p>`:r`<p class="hint">Nothing can be offered before there is a price for it.</p>`}
    <p role="status">${$o()}</p>
  </section>`}var Ip=class extends HTMLElement{#n;#t="";#e="";#i="";#o=new IntersectionObserver(([e])=>e.isIntersecting&&void this.#l(),{rootMargin:"200px"});connectedCallback(){this.#s()}disconnectedCallback(){this.#o.disconnect(),this.#r()}set words(e){this.#t=e}set question(e){JSON.stringify(e)!==JSON.stringify(this.#n)&&(this.#n=e,this.#r(),this.#a(),this.#s())}#s(){this.#o.disconnect(),this.isConnected&&this.#o.observe(this)}#r(){this.#e&&URL.revokeObjectURL(this.#e),[this.#e,this.#i]=["",""]}async#l(){this.#o.disconnect();let e=this.#n,[n,o]=await mA(e);if(e!==this.#n||!this.isConnected)return URL.revokeObjectURL(n);[this.#e,this.#i]=[n,o],this.#a()}#a(){let e=this.#i||"Drawing ...";we(this.#e?r`<img src=${this.#e} alt=${this.#t} />`:r`<p class="hint">${this.#n?e:u}</p>`,this)}};async function mA(t){try{return[URL.createObjectURL(await tn({kind:"picture",quote:t})),""]}catch(e){if(!(e instanceof y))throw e;return["",e.message]}}customElements.define("cost-picture",Ip);function iw(t,e){let{costs:n,currency:o}=t;if(!n.length)return u;let[i,s]=[n[0],n.at(-1)],l=({sell:d,each:c})=>`${c} ${o} at ${d}`;return r`<section class="cost-picture" aria-labelledby="cost-picture">
    <h3 id="cost-picture">A piece's cost, by how many are made</h3>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Picture of the cost of a piece">
      <cost-picture
        .words=${`Cost of a piece against the pieces sold, from ${l(i)} to ${l(s)}, and where the money of a piece goes. The figures stand below.`}
        class=${e?"old":""}
        .question=${e?Et:Ol()}
      ></cost-picture>
    </div>
    <details>
      <summary>The same in figures</summary>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Pieces sold</th>
            <th scope="col">A piece costs, ${o}</th>
          </tr>
        </thead>
        <tbody>
          ${fA(t).map(({sell:d,each:c})=>r`<tr>
                <th scope="row">${d}</th>
                <td>${c}</td>
              </tr>`)}
        </tbody>
      </table>
    </details>
  </section>`}function fA({costs:t,numbers:e,steps:n}){let o=new Set([...e.map(({sell:i})=>i),...n.flatMap(({sell:i})=>[i-1,i]),t[0].sell,t.at(-1).sell]);return t.filter(({sell:i})=>o.has(i))}var sw=({sell:t})=>`${t} to sell`;function rw({numbers:t,currency:e,has_tax:n},o){let i=oi(t);return r`<p class="aside">Money in ${e}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices, side by side">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">Pieces to sell</th>
            ${t.map(s=>r`<th scope="col"><b>${s.sell}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("to make",s=>s.make)} ${i("fillings",s=>s.fillings)}
          ${i("batches",s=>s.batches)}
          ${t.some(s=>s.to_stock)?i("beyond those, at no cost",s=>s.to_stock):u}
        </tbody>
        <tbody>
          ${fr("A piece costs",t)} ${hA(t).map(s=>gA(t,s))}
          ${i("Cost of a piece",s=>s.cost_each,"sum-of")} ${i("The whole run",s=>s.cost)}
        </tbody>
        <tbody>
          ${ql(t,sw)}
        </tbody>
        ${_r(t).map((s,l)=>Ul(t,n,s,l===0))}
      </table>
    </div>`}var hA=t=>[...new Set(t.flatMap(({parts:e})=>e.map(({part:n})=>n)))],gA=(t,e)=>hr(t,e,n=>jl(n,e),n=>Hl(`${e} of the whole run, ${sw(n)}`,n,e)),aw=({numbers:t})=>zl(t,e=>`each piece sold loses money, at ${e.map(({sell:n})=>n).join(", ")} to sell.`);function lw(){return r`<section class="piece quote" aria-labelledby="quote-title">
    <h2 id="quote-title">What it costs, what to ask</h2>
    ${Ge()?$A():_A()}
  </section>`}var _A=()=>r`<p class="hint">Once it is known what you paid for the materials, it stands here what a piece costs.</p>
    <button type="button" @click=${()=>Wp()}>To the prices paid</button>`;function Wp(t,e="lane-studio"){lt("set-up studio"),t&&zt("studio",t),$e("set-up"),requestAnimationFrame(()=>I(B(e)))}function $A(){let{quote:t,complaint:e,is_old:n}=Dl();return r`${t?r`${bA(t)} ${aw(t)}`:u}
    <div class="row">${vA(e)}</div>
    ${Ep()?u:Np(t?.currency,e)} ${e?yA(e):u}
    ${t?RA(t,n):e?u:r`<p class="hint" role="status">Asking what it costs ...</p>`}`}function bA({numbers:t}){let e=[...new Set(t.flatMap(o=>o.dangers))];if(!e.length)return u;let n=o=>t.filter(i=>i.dangers.includes(o)).map(i=>i.sell);return r`<div class="dangers">
    ${e.map(o=>r`<p class="danger"><strong>${pe}</strong> ${n(o).join(", ")} to sell: ${o}</p>`)}
  </div>`}var wA=["sell","margin","markup","price"],Ki=(t,e)=>t?.file===""&&t.field===e?C(t):void 0;function yA(t){return wA.some(e=>Ki(t,e))?u:r`<p class="alarm" role="status">${Wn(t.field)}${C(t)}</p>
    ${t.is_fault?r`<button type="button" @click=${$p}>Ask again</button>`:t.field.startsWith("/")?r`<button type="button" @click=${mp}>Go to the field</button>`:u}
    ${cp(t)}`}function Kl({id:t,label:e,unit:n,value:o,hint:i,complaint:s,take:l,left:d}){return r`<div class="field ${s?"wants":""}">
    <label for=${t} data-said=${n??u}>${e}</label>
    <input
      id=${t}
      .value=${A(o)}
      @input=${c=>l(c.target.value)}
      @blur=${()=>d?.()}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${s?"true":"false"}
      aria-describedby=${s||i?`${t}-said`:u}
    />
    ${gt(t,s,i)}
  </div>`}function vA(t){let{numbers:e}=a.quote_wish;return Kl({id:"quote-numbers",label:"Numbers of pieces",value:e??String(a.plan?.pieces.sell??""),hint:"One, or several to compare: 12, 24, 48",complaint:Ki(t,"sell"),take:n=>ys({numbers:n}),left:()=>{e!==void 0&&!e.trim()&&ys({numbers:void 0})}})}var kA=()=>rt()?Wp("money asking",`${V("studio","/asking")}-name`):Wp(),Ep=()=>Object.keys(g("studio","/asking")??{}).length>0,xA=[["margin","By a margin"],["markup","By a markup"],["price","A price as set"]],TA={margin:{label:"Margin, of the price",unit:"%"},markup:{label:"Markup, on the cost",unit:"%"},price:{label:"Price of a piece",unit:""}};function Np(t,e){let{by:n,figure:o}=a.quote_wish,{label:i,unit:s}=TA[n??"price"],l=d=>s&&kt(d)?`${d.trim()} ${s}`:d;return r`${ut("A price, for this moment",n,xA,d=>{ys({by:d,figure:""}),I(B("quote-figure"))})}
    ${n?r`<div class="row">
            ${Kl({id:"quote-figure",label:i,unit:s||t,value:s?o.replace(/ %$/,""):o,complaint:Ki(e,n),take:d=>ys({figure:l(d)})})}
          </div>`:u}
    <p class="hint">Your ways of selling can be kept in My studio: then each price stands here.</p>
    <button type="button" @click=${kA}>Keep my ways of selling</button>`}function RA(t,e){let n=[...new Set(t.numbers.flatMap(o=>o.unpriced))];return r`${n.length?r`<p class="alarm">
          <strong>Unpriced</strong>, and so no price to ask: ${n.join(", ")}. The cost leaves it out.
        </p>`:u}
  ${t.remarks.map(o=>r`<p class="hint">${o}</p>`)} ${rw(t,e)}
  ${SA(t,e)} ${iw(t,e)}
  ${Jl({file:a.run.file,question:Ol(),prices:t.numbers[0].prices,is_old:e})}`}function SA({numbers:t,steps:e,pack_steps:n,pack_steps_untold:o,gaps:i,currency:s},l){let d=c=>c===null?"":`, ${c} ${s} more`;return r`<div class="worth-making ${l?"old":""}">
    <h3>How many is it worth making?</h3>
    <ul class="limits">
      ${t.flatMap(({around:c})=>c.map(({text:p})=>r`<li><b>${p}</b></li>`))}
      ${i.map(({from:c,to:p,why:m})=>r`<li><b>${c===p?c:`${c} to ${p}`} cannot be made: ${m}.</b></li>`)}
    </ul>
    ${e.length?r`<details>
            <summary>Where the run begins to cost more</summary>
            <ul class="limits">
              ${e.map(c=>r`<li><b>${c.sell}: ${c.begins}${d(c.more)}</b></li>`)}
            </ul>
          </details>`:u}
    ${n.length||o.length?r`<details>
            <summary>Where another pack begins</summary>
            <p class="hint">Each material by itself, in its cheapest packs, without postage.</p>
            <ul class="limits">
              ${n.map(c=>r`<li><b>${c.sell}: ${c.shown_as}${d(c.more)} to lay out</b></li>`)}
              ${o.map(({from:c,to:p,shown_as:m,why:_})=>r`<li><b>${c===p?c:`${c} to ${p}`}: ${m}, not told: ${_}.</b></li>`)}
            </ul>
          </details>`:u}
  </div>`}function uw(){let{order:t}=a;if(!t)return r`<h1 tabindex="-1">Order</h1>`;let{open:e}=t,{due:n}=e.now;return r`${mn(e)} ${fn(e)}
    <h1 tabindex="-1">${String(e.now.for||"Order")}</h1>
    <p class="aside">${e.file}${n?`, due ${U(String(n))}`:u}</p>
    ${Cb()} ${Rn(e.now)?Nl("order"):u}
    <section class="piece quote" aria-labelledby="quote-title">
      <h2 id="quote-title">What it costs, what to ask</h2>
      ${Rn(e.now)?DA():AA()}
    </section>
    ${Rn(e.now)?BA():u}`}var AA=()=>r`<p class="hint" role="status">
    Once each line has its run and its pieces, it stands here what the order costs.
  </p>`;function DA(){let{quote:t,complaint:e,is_old:n}=Bb();return r`${t?r`${nw(t)} ${ew(t)}`:u}
    <div class="row">${PA(e)}</div>
    ${Ep()?u:Np(t?.currency,e)} ${e?MA(e):u}
    ${t?r`${FA(t)} ${ow(t)} ${tw(t,n)}
          ${Jl({file:qt().open.file,question:vp(qt()),prices:t.times[0].prices,is_old:n})}`:e?u:r`<p class="hint" role="status">Asking what it costs ...</p>`}`}var PA=t=>Kl({id:"order-times",label:"How often it is made",value:qt().times,hint:"Once, if nothing is typed; several to compare: 1, 2, 4",complaint:Ki(t,"times"),take:e=>v(qt(),{times:e})}),OA=["times","margin","markup","price"];function MA(t){if(OA.some(n=>Ki(t,n)))return u;let e=Ae("order");return r`<p class="alarm" role="status">
      ${e?r`${Wn(t.field)}${C(t)}`:t.line}
    </p>
    ${t.is_fault?r`<button type="button" @click=${yp}>Ask again</button>`:e&&dn()?r`<button type="button" @click=${()=>Gt(dn())}>Go to the field</button>`:u}`}function FA({times:t}){let e=[...new Set(t.flatMap(n=>n.unpriced))];return e.length?r`<p class="alarm">
    <strong>Unpriced</strong>, and so no price to ask: ${e.join(", ")}. The cost leaves it out.
  </p>`:u}function BA(){let{file:t,now:e}=qt().open,n={plan:{file:t,order:e},paper:a.printing.paper};return r`<section class="out" aria-labelledby="sheets-title">
    <h2 id="sheets-title">The sheets for the bench</h2>
    ${Ll()}
    <div class="choice">
      ${_n({words:"Bench sheets",kind:"sheet",file:`${bo(t)} sheets`,of:n},"strong")}
    </div>
    <p role="status">${$o()}</p>
  </section>`}var CA=(t,e)=>(t.due??"~").localeCompare(e.due??"~")||(e.changed??"").localeCompare(t.changed??"");function dw(){let t=[...a.files?.orders??[]].sort(CA),e=a.new_order.trim(),n=()=>{dt(async()=>{await h_(e),f({new_order:""})})};return r`${Pe("Orders")}
    <section aria-labelledby="orders-title">
      <h2 id="orders-title">Your orders</h2>
      ${t.length?Qe(t,LA):r`<p class="aside">
              None yet. An order names runs of yours and how many pieces of each somebody wants.
            </p>`}
      <h2>A new order</h2>
      <div class="row">
        <div class="field">
          <label for="new-order">For</label>
          <input
            id="new-order"
            .value=${A(a.new_order)}
            @input=${o=>f({new_order:o.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!e} @click=${n}>Begin the order</button>
      </div>
      ${e?"":r`<p class="hint">Say first who it is for: a customer, a market.</p>`}
    </section>
    ${Oe("order")}`}function LA(t){let{pieces:e,due:n,changed:o}=t,i=[e===void 0?"":K(e,"piece"),n?`due ${U(n)}`:"",o?`changed ${U(o)}`:""].filter(Boolean);return hn({kind:Fo,one:t,facts:i,open:()=>js(t.file)})}function pw(){if(a.view==="order"&&a.order)return cw(a.order.open);let t=no();if(t)return cw(t);let e=IA();if(e)return e;let{run:n}=a,o=a.formula_of==="apart"||!(Z(n)||n.theirs||n.failed);return a.view==="formula"&&o?WA():n.theirs?qp(n):n.failed?Ql(`Not saved: ${n.failed}`):Z(n)?Hp:Vl(n.shipped?jp:`Saved in ${n.file}`)}function cw(t){return t.theirs?qp(t):t.failed?Ql(`Not saved: ${t.failed}`):Z(t)?Hp:Vl(t.shipped?jp:`Saved in ${t.file}`)}var jp="Built-in: your first change is saved as a copy.",Hp={words:"Saving ...",is_kept:!1},Vl=t=>({words:t,is_kept:!0}),Ql=t=>({words:t,is_kept:!1,is_failed:!0}),qp=t=>Ql(Wo(t)?`Not saved: ${t.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`);function IA(){let t=a.formulas.apart?"apart":"run",e=Tn(t);if(e)return qp(e);if((t==="apart"?[a.formulas.apart]:[a.formulas.pour,a.formulas.pipe]).some(o=>o&&Z(o)))return a.complaint?.file===""?Ql(`Not saved: ${a.complaint.problem}`):Hp}function WA(){let t=a.formulas[a.formula_of];return Vl(t?t.shipped?jp:`Saved in ${t.file}`:"")}function Yl(){let{view:t,mould:e,order:n,past:o,future:i}=a;if(t==="shelf"||t==="trail")return{};if(t==="moulds"&&e)return Gl(e,c_,p_);let s=ae(t)?no():void 0;return s?Gl({past:mw(s,o),future:mw(s,i)},As,_d):ae(t)?{undo:Ps()&&Ac,redo:xd()&&p$}:t==="order"&&n?Gl(n,g_,__):Gl({past:o,future:i},As,_d)}function mw(t,e){let n=e.at(-1),o=n&&[n.own_fats,n.own_tips].find(i=>i?.file===t);return o&&o.now!==t.now?e:[]}var Gl=({past:t,future:e},n,o)=>({undo:t.length?n:void 0,redo:e.length?o:void 0});var fw={runs:"Runs",orders:"Orders",formulas:"Formulas",moulds:"Moulds",fats:"Fats",tips:"Tips",shelf:"Shelf"},EA={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],record:["Record","M6 5h12v15H6zM9.5 3.5h5v3h-5zM9 11h6M9 15h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],days:["Days","M5 6h14v14H5zM5 10.5h14M9 3.5v5M15 3.5v5"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},NA="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",jA="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",Up=t=>r`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${S`<path d=${t} />`}</svg>`;function _w(){let t=a.view==="reading";return r`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${t?u:r`<nav class="rail-lists" aria-label="Lists">
                ${mf.map(e=>$w(e,fw[e],r`${fw[e]}`))}
              </nav>
              ${qA()}`}
    </div>
    ${t?u:UA()}
  </header>`}var HA={metric:r`g<span class="wide">, mm</span>`,both:r`both`,us:r`oz<span class="wide">, in</span>`},Zl=["metric","both","us"],hw={metric:"g",both:"both",us:"oz"},gw=t=>()=>{f({units:t}),localStorage.setItem("units",t)};function qA(){let t=Zl[(Zl.indexOf(a.units)+1)%Zl.length];return r`<div class="tools units" role="group" aria-label="Units">
      ${Zl.map(e=>r`<button type="button" aria-pressed=${a.units===e?"true":"false"} @click=${gw(e)}>
            ${HA[e]}
          </button>`)}
    </div>
    <button type="button" class="next-units" @click=${gw(t)}>
      <span aria-hidden="true">⇄ </span><span class="unseen">Units: </span>${hw[a.units]}<span
        class="unseen"
        >. Change to ${hw[t]}</span
      >
    </button>`}function UA(){let{undo:t,redo:e}=Yl();return r`<div class="bar">
    ${a.run.file?zA():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!t} @click=${t}>${Up(NA)}<span>Undo</span></button>
      <button type="button" ?disabled=${!e} @click=${e}>${Up(jA)}<span>Redo</span></button>
    </div>
    ${a.run.file||a.view==="order"?GA():u}
  </div>`}function zA(){return r`<nav aria-label="Views of this run">
    <p class="rail-name">${String(a.run.now.name??a.run.file)}</p>
    <div class="rail-views">${ff.map(JA)}</div>
  </nav>`}function JA(t){let[e,n]=EA[t],o=KA(t);return $w(t,o?`${e}, ${o.words}`:e,r`${Up(n)}<span>${e}</span>${o?r`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function KA(t){if(t==="watch"&&y_())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(t==="record"&&VA())return{sign:"\u2717",words:"refused"};if(t==="set-up"&&QA())return{sign:"\u25CB",words:"missing"}}var VA=()=>a.record.run===a.run.file&&a.record.batches.some(({begun:t})=>Da(t.id)>0),QA=()=>a.complaint!==void 0&&!a.complaint.is_fault;function $w(t,e,n){let o=a.view===t||a.view==="order"&&t==="orders"||a.view==="trail"&&t==="shelf";return r`<button
    type="button"
    aria-label=${e}
    aria-current=${o?"page":u}
    @click=${()=>{$e(t)}}
  >
    ${n}
  </button>`}function GA(){let{words:t,is_kept:e,is_failed:n}=pw();return r`<p class="saving ${n?"failed":e?"kept":""}" role="status">${t}</p>`}var bw=()=>r`<section class="card" aria-label="What it is for">
      <div class="row">
        ${h({label:"Due",at:"/due",date:!0,optional:!0,short:!0,hint:"The day it is handed over. Left blank, it is begun today."})}
        ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
        ${h({label:"For",at:"/for",optional:!0,hint:"Whom or what, such as the spring fair."})}
      </div>
    </section>
    ${Nl("run")}`;function yw(t){if(!i$(t))return u;let{whole:e}=t,{batches:n}=e.pieces,o=Jt(e)?`${K(n,"batch","batches")} together`:"all whippings together";return r`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${ww(t,"pour","The base, whole run")}
      ${e.pipe?ww(t,"pipe","The topping, whole run"):u} ${YA(t)}
    </div>
  </section>`}function ww(t,e,n){let{whole:o}=t,i=e==="pour"?o.pour:o.pipe,s=[...v$(i),...rl(i)];return r`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${s.map(({one:l,i:d})=>Xl(`${e}.ingredients.${d}.g`,l.name,ti(a.units,l)))}
    ${Xl(`${e}.make_g`,e==="pour"?"Base in all":"Topping in all",q(a.units,i.make_g))}
  </div>`}var Xl=(t,e,n)=>L({key:`needs.${t}`,label:e,shown:n,of:t});function YA(t){let{whole:e}=t,n=(e.pour.layers??[]).flatMap((s,l)=>s.colours.map((d,c)=>({layer:s,one:d,i:l,j:c}))),o=e.dust??[];if(!n.length&&!o.length)return u;let i=s=>nt(a.units,ht(s,""));return r`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:s,one:l,i:d,j:c})=>Xl(`pour.layers.${d}.colours.${c}.g`,`${l.name}, for ${s.name}`,ti(a.units,l)))}
    ${o.map((s,l)=>Xl(`dust.${l}.g`,s.name,i(s)))}
  </div>`}function vw(t){let{cost:e,fresh_g:n,cured_g:o,label_g:i,lightest:s,size:l}=t.piece,d=s?"A bar on average, ":"",c=p=>d?d+p.toLowerCase():p;return r`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${L({key:"piece.fresh",label:c("Fresh"),shown:q(a.units,n),of:"piece.fresh_g"})}
      ${o===null?u:L({key:"piece.cured",label:c("Cured"),shown:q(a.units,o),of:"piece.cured_g"})}
      ${s?L({key:"piece.lightest",label:"The lightest bar",note:s.cured_g===null?"fresh":"cured",shown:q(a.units,s.cured_g??s.fresh_g),of:s.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
      ${i===null?u:L({key:"piece.label",label:"Net weight for the label",shown:q(a.units,i,0),of:"piece.label_g"})}
      ${l?L({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[l.width_mm,l.depth_mm,l.height_mm].map(p=>R(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
      ${e&&e.amount!==null?r`${L({key:"piece.cost",label:"Material cost of one piece",shown:[`${e.amount} ${e.currency}`,""],size:"weigh",note:`${e.total} ${e.currency} for the run`,of:"piece.cost.amount"})}
            ${e.unpriced.length?r`<p class="alarm">Unpriced, and not in this figure: ${e.unpriced.join(", ")}.</p>`:u}`:r`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${zp(t)}
    </section>
    ${lw()} ${yw(Wi(t))}`}function zp(t){let e=t.label;if(!e)return u;let n=(e.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,s)=>s?r`<h3>${i}</h3>
          <p>${s}</p>`:u;return r`<details>
    <summary>Label draft, ${e.market}</summary>
    ${o("Net quantity",e.net_quantity?`${e.net_quantity.statement}: ${e.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",e.as_saponified?.text)}
    ${o("Ingredients, as charged",e.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(e.remarks??[]).map(i=>r`<li>${i.text}</li>`)}
    </ul>
  </details>`}var ZA={mass:["g","oz"],temperature:["\xB0C","\xB0F"],minutes:["min"],length:["mm","in"],volume:["ml"]};function $r({kind:t,unit:e}){let n=ZA[t]??[];return e&&n.includes(e)?[e,...n.filter(o=>o!==e)]:n}var kw="degrees",XA=()=>localStorage.getItem(kw)??void 0,xw=t=>localStorage.setItem(kw,t);function Jp(t){return t.kind!=="temperature"?$r(t)[0]:a.units!=="both"?a.units==="us"?"\xB0F":"\xB0C":XA()}function Tw(t,e){let n=t.kind==="length"&&e?e.startsWith("-")?"below":"above":void 0,o=n?e.replace(/^[+-]\s*/,""):e,i=Re(o);return $r(t).includes(i)?{number:o.slice(0,o.length-i.length).trim(),unit:i,side:n}:{number:o,side:n}}function Rw({number:t,unit:e,side:n}){let o=t.trim();if(!o)return"";let i=e&&kt(o)?`${o} ${e}`:o;return n==="below"&&!/^[+-]/.test(i)?`-${i}`:i}function tu({kind:t},{number:e,unit:n,side:o}){return t==="temperature"&&!n&&kt(e)?"Is that in \xB0C or in \xB0F?":t==="length"&&o===void 0&&/[1-9]/.test(e)&&!/^\s*[+-]/.test(e)?"Above the line or below it?":void 0}var Ye,tD=(t,e)=>`note-${t}-${e.replaceAll(/[^\w]/g,"-")}`;function eu(t,e){let n=an(t.begun.id,e.key),o=tD(t.begun.id,e.key),i=n?.refused!==void 0;return r`<div class="blank ${i?"wants":""}" data-key=${e.key}>
    ${e.kind==="choice"?r`<p class="blank-words" id="${o}-label">${e.words}</p>`:r`<label class="blank-words" for=${o}>${e.words}</label>`}
    <div class="blank-value">${eD(t,e,o,n)}</div>
    <p class="blank-beside">
      ${e.planned?r`<span class="planned">planned <b>${e.planned}</b></span>`:u}
      ${aD(t,e,n)}
    </p>
    ${cD(t,e,o,n)}
  </div>`}function eD(t,e,n,o){if(e.kind==="choice")return rD(t,e,n,o);let i=Sw(t,e,o),s=$r(e).length>0||e.kind==="count",l=c=>Kp(t,e,{...i,number:c.target.value}),d=c=>{Go(c),nD(t,e)};return r`<input
      id=${n}
      type=${e.kind==="date"?"date":"text"}
      inputmode=${e.kind==="count"?"numeric":s?"decimal":u}
      class=${s?"number":""}
      autocomplete="off"
      .value=${A(i.number)}
      aria-invalid=${o?.refused?"true":"false"}
      aria-describedby=${o?.refused||tu(e,i)?`${n}-said`:u}
      @input=${l}
      @blur=${d}
      @keydown=${c=>c.key==="Enter"&&oD(c)}
    />
    ${iD(t,e,i)} ${sD(t,e,i)}`}function Sw({begun:t},e,n){if(Ye?.batch===t.id&&Ye.key===e.key)return Ye.typed;if(n?.lacks)return{number:n.text,unit:e.kind==="temperature"?void 0:Jp(e)};let o=Tw(e,n?n.value:e.noted??"");return{...o,unit:o.unit??Jp(e)}}function Kp(t,e,n,o=!1){Ye={batch:t.begun.id,key:e.key,typed:n},Aw(t,e,n,o),G()}function Aw(t,e,n,o){let i=tu(e,n)!==void 0;Nd(t,{key:e.key,text:n.number,value:Rw(n),is_left:o,lacks:i})}function nD(t,e){if(Ye?.batch!==t.begun.id||Ye.key!==e.key)return;let{typed:n}=Ye;Ye=void 0,Aw(t,e,n,!0),G()}function oD({target:t}){[...document.querySelectorAll(".blank :is(input, button)")].find(n=>n.compareDocumentPosition(t)&Node.DOCUMENT_POSITION_PRECEDING)?.focus()}function iD(t,e,n){let o=$r(e);if(e.kind!=="temperature")return o.length?r`<span class="unit">${n.unit??o[0]}</span>`:u;let i=s=>{xw(s),Kp(t,e,{...n,unit:s},!0)};return Dw(`Degrees: ${e.words}`,o,n.unit,i)}function sD(t,e,n){if(e.kind!=="length")return u;let o=i=>Kp(t,e,{...n,side:i},!0);return Dw(`Side: ${e.words}`,["above","below"],n.side,o)}var Dw=(t,e,n,o)=>r`<div class="choice" role="group" aria-label=${t}>
    ${e.map(i=>r`<button type="button" aria-pressed=${i===n?"true":"false"} @click=${()=>o(i)}>
          ${i}
        </button>`)}
  </div>`;function rD(t,e,n,o){let i=o?o.value:e.noted,s=l=>{so(t,e.key,l),F(l?`${e.words}: ${l}`:`${e.words}: taken back`)};return r`<div class="choice" role="group" id=${n} aria-labelledby="${n}-label">
    ${(e.choices??[]).map(l=>r`<button type="button" aria-pressed=${l===i?"true":"false"} @click=${()=>s(l)}>
          ${l}
        </button>`)}
    ${i?r`<button type="button" class="plain" @click=${()=>s("")}>Take back</button>`:u}
  </div>`}function aD({begun:t},e,n){if(n?.refused??n?.lacks)return r`<span class="stands not">✗ not noted</span>`;if(n)return r`<span class="stands waiting">… not kept yet</span>`;let o=Ye?.batch===t.id&&Ye.key===e.key;return e.noted!==void 0&&!(o&&!Ye.typed.number.trim())?r`<span class="stands kept">✓ noted ${dD(e.noted_at)}</span>`:u}var lD=new Intl.DateTimeFormat("en-GB",{hour:"2-digit",minute:"2-digit"}),uD=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"short"});function dD(t){if(!t)return"";let e=new Date(t);return(e.toDateString()===new Date().toDateString()?lD:uD).format(e)}function cD(t,e,n,o){if(o?.refused)return Vp(o,`${n}-said`);let i=tu(e,Sw(t,e,o));return i?r`<p class="complaint" id="${n}-said">${i}</p>`:u}function Vp(t,e){let{words:n,is_asked:o,noted:i,is_lye:s}=t.refused,l=t.value||"nothing",d=i!==void 0;return r`<div class="blank-said" role="alert">
    <p class=${s?"alarm":"complaint"} id=${e} data-lye=${s?"true":u}>
      ${s?r`<strong aria-hidden="true">⚠</strong> `:u}${/^(is|was|makes|has|cannot) /.test(n)?`It ${n}`:n}.
    </p>
    ${o||d?r`<div class="row">
            ${d?r`<button type="button" @click=${()=>Pg(t)}>Keep ${i||"it blank"}</button>`:u}
            <button type="button" @click=${()=>Dg(t)}>
              ${d?`Note ${l} in its place`:`It is so: note ${l}`}
            </button>
          </div>`:u}
  </div>`}var Pw="record weights";function Ow(t){let{rows:e=[]}=t;if(!e.length)return u;let n=a.open.has(Pw),o=e.filter(i=>n||i.noted!==void 0||an(t.begun.id,i.key));return r`<section class="record-part" aria-labelledby="record-weights">
    <h2 id="record-weights" tabindex="-1">Really weighed</h2>
    <p class="aside">Only where it was not what was planned: its lot then loses what was used.</p>
    ${o.map(i=>r`${pD(i,o)} ${eu(t,mD(i))}`)}
    <p>
      <button type="button" aria-expanded=${n?"true":"false"} @click=${()=>Bt("open",Pw)}>
        ${n?"Fold the weights away":"Another weight than planned"}
      </button>
    </p>
  </section>`}var pD=(t,e)=>e.find(({of:n})=>n===t.of)===t?r`<h3>${t.of}</h3>`:u,mD=t=>({...t,kind:"mass",when:"base_mixed"});var br=t=>{let{beginning:e}=a.record;e&&Ht({beginning:{...e,...t}})},Mw=t=>Ht({beginning:{batch:t,code:"",answers:{}},told:void 0}),Qp=()=>Ht({beginning:void 0}),Fw=t=>br({code:t,complaint:void 0});async function Gp(t){let{beginning:e}=a.record;if(!(!e||e.is_asking)){br({is_asking:!0,complaint:void 0});try{a.run.shipped&&await Kn(a.run),await We(),await fD(e,t)}catch(n){if(!(n instanceof y))throw n;br({complaint:n.complaint}),F(`Not begun: ${n.complaint.problem}`)}finally{br({is_asking:!1})}}}async function fD({batch:t,code:e,answers:n},o){let i=a.run.file,s=Jo(t)!==void 0,l=await kg({run:i,batch:t,seen:o,code:e.trim()||void 0,again:s,...n}),[d]=l.record.batches;Ht({run:i,beginning:void 0,told:{batch:d.begun.id,remarks:(l.record.remarks??[]).map(c=>c.text)}}),Ta(l,i),F(`The record is begun: ${d.begun.code}`),Pa(d,Ho(t)),await Sn()}async function Bw(t,e){let{beginning:n}=a.record;if(!n)return;let{answers:o}=n,i=s=>{let l=t[s];return l===void 0?o[s]:[...o[s]??[],l]};br({answers:{confirmed:i("confirmed"),lot:i("lot"),"beyond-stock":i("beyond-stock")}}),await Gp(e)}var Yp=(t,e)=>Ht({code:{batch:t,text:e}}),nu=()=>Ht({code:void 0});async function Cw(){let{code:t,run:e}=a.record;if(!t?.text.trim())return nu();try{let n=crypto.randomUUID();Ta(await ya({run:e,batch:t.batch,act:n,code:t.text.trim()}),e),nu()}catch(n){if(!(n instanceof y))throw n;Ht({code:{...t,complaint:C(n.complaint)}})}}var wr="batch-code";function ou({begun:t}){let{code:e}=a.record,n=e?.batch===t.id,o=()=>{Yp(t.id,t.code),I(B(wr))};return r`<div class="batch-code">
    <p><span class="aside">On the mould:</span> <b class="code">${t.code}</b></p>
    ${n?r`<div class="row">
            <div class="field ${e.complaint?"wants":""}">
              <label for=${wr}>Another code</label>
              <input
                id=${wr}
                autocomplete="off"
                .value=${A(e.text)}
                aria-describedby=${e.complaint?`${wr}-said`:u}
                @input=${i=>Yp(t.id,i.target.value)}
              />
            </div>
            <button type="button" class="strong" @click=${()=>{Cw()}}>Use this code</button>
            <button type="button" @click=${nu}>Leave it</button>
            ${e.complaint?r`<p class="complaint" id="${wr}-said">${e.complaint}</p>`:u}
          </div>`:r`<button type="button" @click=${o}>Change the code</button>`}
  </div>`}var yr;function hD(){let t=new Date;return[t.getFullYear(),t.getMonth()+1,t.getDate()].map(e=>String(e).padStart(2,"0")).join("-")}var Xp=t=>`cured.${t}`;function Lw(t,e){let{id:n}=t.begun,o=yr?.batch===n?yr:{batch:n,day:hD(),pieces:"",weight:""},i=t.cured??[],s=i.find(({on:d})=>d===o.day),l=o.day!==""&&o.pieces.trim()!==""&&o.weight.trim()!=="";return r`<div class="blank cure" data-key=${e.key}>
    <p class="blank-words">
      Weighed while it cures ${e.planned?r`<small>planned, cured: ${e.planned}</small>`:u}
    </p>
    ${_D(n).map($D)}
    ${i.length?r`<ul class="weighings">
            ${i.map(d=>wD(t,d))}
          </ul>`:r`<p class="aside">None noted yet.</p>`}
    <div class="row">
      ${Zp("Day","cure-day","date",o.day,d=>({...o,day:d}))}
      ${Zp("Pieces","cure-pieces","numeric",o.pieces,d=>({...o,pieces:d}))}
      ${Zp(`Weight together, ${e.unit??"g"}`,"cure-weight","decimal",o.weight,d=>({...o,weight:d}))}
      <button type="button" ?disabled=${!l} @click=${()=>gD(t,e,o)}>
        ${s?"Put it in its place":"Note this weighing"}
      </button>
    </div>
    ${s?r`<p class="hint">Noted of ${U(s.on)} already: ${Sa(s)}.</p>`:u}
  </div>`}var Zp=(t,e,n,o,i)=>r`<div class="field short">
    <label for=${e}>${t}</label>
    <input
      id=${e}
      type=${n==="date"?"date":"text"}
      inputmode=${n==="date"?u:n}
      autocomplete="off"
      .value=${A(o)}
      @input=${s=>{yr=i(s.target.value),G()}}
    />
  </div>`;function gD(t,{unit:e="g"},n){let o=kt(n.weight)?`${n.weight.trim()} ${e}`:n.weight.trim(),i=n.pieces.trim(),s=`${i} ${i==="1"?"piece":"pieces"}, ${o}`;so(t,Xp(n.day),s),F(`Weighing of ${U(n.day)}: ${s}`),yr=void 0,G(),I(B("cure-pieces"))}var _D=t=>a.record.acts.filter(e=>e.batch===t&&e.key.startsWith("cured.")),$D=t=>{let e=U(t.key.slice(6));return t.refused?r`<p><b>${e}</b> <span class="stands not">✗ not noted</span></p>
        ${Vp(t,`said-${t.id}`)}
        <div class="row"><button type="button" @click=${()=>bD(t)}>Correct it</button></div>`:r`<p><b>${e}</b>: ${t.value||"taken back"} <span class="stands waiting">… not kept yet</span></p>`};function bD({batch:t,key:e,value:n}){let[,o="",i=""]=/^\s*(\S+) pieces?, (.*)$/.exec(n)??[];yr={batch:t,day:e.slice(6),pieces:o,weight:i},G(),I(B("cure-pieces"))}function wD(t,e){let n=an(t.begun.id,Xp(e.on));return r`<li>
    <span><b>${U(e.on)}</b>: ${Sa(e)} <span class="stands kept">✓ noted</span></span>
    ${n?u:r`<button
            type="button"
            aria-label="Take back the weighing of ${U(e.on)}"
            @click=${()=>so(t,Xp(e.on),"")}
          >
            Take back
          </button>`}
  </li>`}function Iw(){let{batches:t}=a.record;if(t.length<2)return u;let e=Ra();return r`<ul class="makings" aria-label="Batches of this run">
    ${[...t].reverse().map(n=>yD(n,n.begun.id===e?.begun.id))}
  </ul>`}function yD(t,e){let{id:n,code:o}=t.begun,i=Da(n);return r`<li>
    <button type="button" aria-pressed=${e?"true":"false"} @click=${()=>zo(n)}>
      <b>${o}</b> <span>${tm(t)}</span>
      <small>${vr(t)}; ${K(t.noted,"blank")} noted${i?`; ${i} not taken`:""}</small>
    </button>
  </li>`}function tm({number:t,begun:e}){let{of:n=1}=a.record;return`${n>1||t>1?`batch ${t} of ${Math.max(n,t)}, `:""}${K(e.pieces,"piece")}, begun ${U(e.begun_on)}`}var vr=({for_sale:t,not_for_sale_because:e=""})=>t?"For sale":`Not for sale: ${At(e)}`;function Ww(t,e){let{number:n,begun:o}=t,i=a.bench.run===a.record.run?Gn(n):void 0,s=i&&new Date(i.begun_at)<=new Date(o.begun_at)?Ho(n):"";return!s||Aa(t,e.key)||an(o.id,e.key)?u:r`<p class="read-at-weights">
    <button type="button" @click=${()=>so(t,e.key,s)}>
      Note ${s}, as read at the weights
    </button>
  </p>`}function Ew(t){xa();let e=Ra();return r`<section class="record" aria-labelledby="run-title">
    <h1 id="run-title" tabindex="-1">${a.plan?.run??String(a.run.now.name??"")}</h1>
    ${vD()} ${Iw()} ${e?xD(e):kD(t)}
  </section>`}function vD(){let{failed:t,unsent:e,acts:n}=a.record,o=e!==void 0&&n.some(i=>!i.refused);return r`<div role="status">
    ${t!==void 0?r`<p class="alarm"><strong>What is recorded could not be read:</strong> ${t}.</p>`:u}
    ${o?r`<p class="alarm">
            <strong>Not kept yet:</strong> ${e}. What you type is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
  </div>`}function kD(t){return a.record.version===void 0?r`<p class="hint">${a.record.failed===void 0?"Reading ...":""}</p>`:r`<p>No batch of this run is recorded yet. Its record begins when its lye is mixed, at the weights.</p>
    <p><button type="button" class="strong" @click=${t}>To the weights</button></p>`}function xD(t){let{blanks:e}=t;return r`<div class="record-head">
      ${ou(t)}
      <p>${tm(t)}</p>
      <p class="sale ${t.for_sale?"is":""}">
        <span aria-hidden="true">${t.for_sale?"\u2713":"\u2717"}</span> <b>${vr(t)}</b>
      </p>
      ${TD()?r`<button type="button" @click=${()=>xe(t.begun.code)}>What is in it</button>`:u}
    </div>
    ${(t.as_weighed??[]).map(({severity:n,text:o})=>r`<p class=${n==="danger"?"alarm":"aside"}>
          ${n==="danger"?r`<strong aria-hidden="true">⚠</strong> `:u}${o}
        </p>`)}
    ${e?DD(t,e):r`<p class="hint">Reading ...</p>`}`}var TD=()=>!a.record.run.includes("/"),RD={day_before:"Cast beforehand",base_mixed:"Mixing",poured:"Pouring",topping_mixed:"Mixing",whipped:"Whipping",piped:"Piping",afterwards:"Pieces and time"},SD="unmoulded_on",em="Cure and test";function AD(t){let e=[];for(let n of t){let o=e.at(-1),s=n.key===SD||o?.title===em?em:RD[n.when],l=n.of??"";o?.title===s&&o.of===l?o.blanks.push(n):e.push({title:s,of:l,blanks:[n]})}return e}function DD(t,e){let n=AD(e);return r`<nav class="parts-of-record" aria-label="Parts of the record">
      ${n.map((o,i)=>r`<button type="button" @click=${()=>PD(i)}>${Nw(o)}</button>`)}
    </nav>
    ${n.map((o,i)=>OD(t,o,i))} ${Ow(t)}`}var Nw=({title:t,of:e})=>e?`${t}: ${e}`:t,nm=t=>`record-part-${t}`;function PD(t){let e=document.getElementById(nm(t));e?.focus({preventScroll:!0}),e?.scrollIntoView({block:"start"})}var OD=(t,e,n)=>r`<section class="record-part" aria-labelledby=${nm(n)}>
    <h2 id=${nm(n)} tabindex="-1">${Nw(e)}</h2>
    ${e.title===em?MD(t):u} ${e.blanks.map(o=>FD(t,o))}
  </section>`,MD=({for_sale:t})=>t?u:r`<p class="aside">
        Nothing is for sale without a test: note how it was tested and what came of it, then the day from which it is
        ready, or why it is held back.
      </p>`,FD=(t,e)=>e.kind==="weighing"?Lw(t,e):r`${eu(t,e)} ${jd(e)?Ww(t,e):u}`;var[Hw,im]=[440,270],[kr,om,iu,Vi]=[64,Hw-10,10,im-52],BD=6,CD=8;function jw(t){let e=t/BD,n=10**Math.floor(Math.log10(e)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=e);return Array.from({length:Math.floor(t/o+1e-9)+1},(i,s)=>s*o)}var Qi=t=>R(t,1);function qw(t,e){let n=t.at(-1)?.depth_mm??1,o=t.at(-1)?.volume_ml??1,i=d=>Qi(kr+(om-kr)*d/n),s=d=>Qi(Vi-(Vi-iu)*d/o),l=t.map(({depth_mm:d,volume_ml:c})=>`L${i(d)} ${s(c)}`).join("");return r`<svg
      class="level-curve"
      viewBox="0 0 ${Hw} ${im}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${e} millimetres"
    >
      ${jw(n).map(d=>S`<path class="grid" d="M${i(d)} ${iu}V${Vi}" />
            <text x=${i(d)} y=${Vi+20} text-anchor="middle">${Qi(d)}</text>`)}
      ${jw(o).map(d=>S`<path class="grid" d="M${kr} ${s(d)}H${om}" />
            <text x=${kr-8} y=${s(d)} text-anchor="end" dominant-baseline="middle">${Qi(d)}</text>`)}
      ${S`<text x=${(kr+om)/2} y=${im-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(iu+Vi)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${s(0)}${l}" />
        <path class="pour-line" d="M${i(e)} ${iu}V${Vi}" />`}
    </svg>
    ${LD(t)}`}function LD(t){let e=Math.max(1,Math.round(t.length/CD)),n=t.filter((o,i)=>(i+1)%e===0);return r`<details>
    <summary>The curve as a table</summary>
    <table class="levels">
      <caption>
        What one cavity holds to a depth
      </caption>
      <thead>
        <tr>
          <th scope="col">Depth, mm</th>
          <th scope="col">Volume, ml</th>
          <th scope="col">One millimetre more, ml</th>
        </tr>
      </thead>
      <tbody>
        ${n.map(({depth_mm:o,volume_ml:i,ml_per_mm:s})=>r`<tr>
              <th scope="row">${Qi(o)}</th>
              <td>${Qi(i)}</td>
              <td>${R(s,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var su=Math.PI/8,ID=500,sm=class extends HTMLElement{#n=[];#t=0;#e;#i=!1;#o=!1;#s="";#r=!1;#l="";#a="Drawing ...";#d=0;#m=!1;#f=new ResizeObserver(()=>this.#e?.fit());#h=new IntersectionObserver(([e])=>this.#$(e.isIntersecting),{rootMargin:"400px"});set views(e){this.#n=e,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#d),this.#h.disconnect(),this.#f.disconnect(),this.#e?.end(),this.#e=void 0,this.#l="",URL.revokeObjectURL(this.#s)}#$(e){this.#m=e,e&&requestIdleCallback(()=>{this.#b()},{timeout:1500})}async#b(){if(this.#e||this.#o)return this.#g();let e=this.querySelector("canvas");if(!(!this.isConnected||!e||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#e=new n(e),this.#f.observe(e)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#p()}}#g(){let e=this.#e||this.#o;!this.#m||!e||this.#c()===this.#l||(window.clearTimeout(this.#d),this.#d=window.setTimeout(()=>{this.#p()},ID))}#c(){let{of:e}=this.#n[this.#t],n=this.#o?"plan"in e?"piece":"picture":"glb",[o,i]=Object.entries(e)[0];return JSON.stringify({kind:n,[o]:this.#r&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let e=this.#c();if(e!==this.#l){try{let n=await tn(JSON.parse(e));if(e!==this.#c()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#s),this.#s=URL.createObjectURL(n)):this.#e?.show(ki(await n.arrayBuffer())),this.#l=e,this.#a=""}catch(n){if(!(n instanceof y))throw n;this.#a=n.message}this.#u()}}#_(e){e(),this.#a="Drawing ...",this.#u(),this.#p()}#u(){let e=r`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>r`<button
            type="button"
            aria-pressed=${i===this.#t?"true":"false"}
            @click=${()=>this.#_(()=>this.#t=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=r`<p class="aside" role="status">${this.#a}</p>`;we(r`${e} ${this.#o?this.#y():this.#w()} ${n}`,this)}#w(){let e=i=>()=>this.#e?.turn(i),n=i=>()=>this.#e?.tip(i),o=()=>this.#_(()=>this.#r=!this.#r);return r`<canvas
        role="img"
        aria-label="${this.#n[this.#t]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${e(-su)}>Turn left</button>
        <button type="button" @click=${e(su)}>Turn right</button>
        <button type="button" @click=${n(su)}>From above</button>
        <button type="button" @click=${n(-su)}>From below</button>
        <button type="button" aria-pressed=${this.#r?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return r`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#s?r`<img
              src=${this.#s}
              alt="${this.#n[this.#t].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",sm);function Uw(t){let{measured:e}=a;if(!e)return r`<p role="status">${a.measuring_failed??"Measuring the mould ..."}</p>`;let n=e.gauge.pockets[0],o=e.gauge.notes;return r`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${t.pour.mould}</small></h2>
    ${L({key:"mould.brimful",label:"To the brim",note:`${P(Mt(a.units,n.brim_mm-n.floor_mm))} deep, ${e.gauge.pockets.length} ${e.gauge.pockets.length===1?"cavity":"cavities"}`,shown:Ct(a.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:e.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${qw(n.levels,t.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${WD(t,e.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?r`<ul class="limits">
            ${o.map(i=>r`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function WD(t,e){let n={words:"The mould, filled",of:{gauge:{file:e,"below-brim":`${t.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:a.run.file,run:a.run.now}}};return t.pipe||t.decorations?.length||t.pour.layers?.length?[o,n]:[n,o]}var ED=t=>t.batches.flatMap(e=>e.numbers.map(n=>({number:n,one:e}))).sort((e,n)=>e.number-n.number);function zw(t){let{batch:e}=a.printing;return Jt(t)&&e<=t.pieces.batches?e:0}function ND(t){if(!Jt(t))return u;let e=zw(t),n=i=>ni({batch:Number(i.target.value)}),o=(i,s)=>r`<option value=${i} .selected=${A(i===e)}>${s}</option>`;return r`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${ED(t).map(({number:i,one:s})=>o(i,`batch ${i} of ${t.pieces.batches}: ${Ve(t,s)}`))}
      </select>
    </div>
  </div>`}function Jw(t){let{paper:e}=a.printing,n=bo(a.run.file),o={file:a.run.file,run:a.run.now},i=a.measured?.mould,s={file:i,"below-brim":`${t.pour.below_brim_mm} mm`},l=zw(t),d={plan:o,paper:e,...l?{batch:String(l)}:{}};return r`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${Ll()} ${ND(t)}
    <div class="choice">
      ${_n({words:"Bench sheet",kind:"sheet",file:`${n}${l?` batch ${l}`:""}`,of:d},"strong")}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${t.label?Zt("Label draft",ie(`${n} label.txt`,{kind:"label",plan:o})):""}
      ${Zt("Drawing of the pour, true size",ie(`${n} pour.svg`,{kind:"picture",plan:o}))}
      ${Zt("Drawing of the piece",ie(`${n}.svg`,{kind:"piece",plan:o}))}
      ${Zt("Whole piece, GLB (3D viewer)",ie(`${n}.glb`,{kind:"glb",plan:o}))}
      ${Zt("Whole piece, STL (3D printing)",ie(`${n}.stl`,{kind:"stl",plan:o}))}
      ${i?r`${Zt("Filled cavity, GLB (3D viewer)",ie(`${n} cavity.glb`,{kind:"glb",gauge:s}))}
            ${Zt("Cavity, STL (3D printing)",ie(`${n} cavity.stl`,{kind:"stl",gauge:{file:i}}))}`:""}
    </div>
    <p role="status">
      ${$o()||`The drawing has the pour line ${P(Mt(a.units,t.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var Kw=t=>Jw(t);var Ft={at:"/decorations"},Gi=t=>`${Ft.at}/${t}`,wo=t=>D("run",`${Gi(t)}/name`).trim()||`Decoration ${t+1}`,se=()=>$(a.run.now,"/cut")!==void 0,ii=t=>["mould","rod","drizzle","bought"].find(e=>g("run",`${t}/${e}`)!==void 0),xr=t=>["per_piece","per_cast"].find(e=>g("run",`${t}/${e}`)!==void 0);var be="/batch",Vw=t=>`${t}/moulds_owned`;function rm(){return O({name:"batches",pointers:[be],summary:`Batches${jD()}`,body:()=>r` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${E("run",be)}
        <div class="row">${HD()} ${UD()}</div>
        ${T({question:"Cavities at each filling",at:be,asked_at:`${be}/fill`,chosen:g("run",`${be}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:t=>Qw("fill",t==="full"?t:void 0)})}`})}function jD(){let[t,e]=[`${be}/pieces`,`${be}/casts`].map(o=>D("run",o)),n=[t&&`at most ${t} in a batch`,e&&`at most ${e} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function Qw(t,e){let n=ft("run",be,[t]),o=e===void 0?n:{...n,[t]:e};return Object.keys(o).length?o:void 0}function HD(){let t=g("run",`${be}/casts`)!==void 0,e=(n,o)=>h({label:o,at:`${be}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0,term:"batch"});return se()?g("run",`${be}/pieces`)!==void 0?r`${e("pieces","Most bars in a batch")}
        <button type="button" @click=${qD}>Count loaves instead</button>`:e("casts","Most loaves in a batch"):t?e("casts","Most casts in a batch"):e("pieces","Most pieces in a batch")}function qD(){j("run","Counted in loaves",be,Qw("pieces",void 0))}function UD(){let t=`${be}/whippings`;return!he()&&g("run",t)===void 0?u:h({label:"Whippings a batch",at:t,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var zD={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},Me={at:"/dust"},ru=t=>D("run",`/dust/${t}/name`).trim()||`Dust ${t+1}`;function Gw(){lt("set-up dust"),H(Me,{name:""},"Dust")}function JD(t){return g("run",`${t}/per_piece`)!==void 0?"piece":g("run",`${t}/on_covered_surface`)===void 0?void 0:"surface"}function Yw(t){let e=`/dust/${t}`,n=JD(e),o=ru(t),i=s=>({...ft("run",e,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...zD[s]});return r` ${h({label:"Which powder",at:`${e}/name`})}
  ${T({question:"How much of it?",at:e,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?h({label:`${o}, for one piece`,at:`${e}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?r`<div class="row">
            ${h({label:"Powder on the covered surface",at:`${e}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${h({label:"Share of the surface covered",at:`${e}/coverage`,unit:"%",short:!0})}
            ${h({label:"Share of the powder that sticks",at:`${e}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${fo("run",e,o)}`}var KD={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function VD(t){return["on_top","buried"].find(e=>g("run",`${t}/${e}`)!==void 0)??"by number"}function Zw(t,e){let n=VD(t),o=i=>({...ft("run",t,["on_top","buried"]),...KD[i]});return ii(t)==="drizzle"?r`<p class="aside">A drizzle lies on the surface it covers.</p>`:ii(t)==="bought"?r`<p class="aside">What is bought is counted; where it sits is not checked.</p>`:O({name:`${t} where`,pointers:[`${t}/on_top`,`${t}/buried`],summary:"Where it goes",body:()=>r` ${T({question:"Where does it go?",at:t,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?QD(`${t}/on_top`):n==="buried"?YD(t,e):r`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function QD(t){return r`<div class="row">
      ${h({label:"Pressed into the top",at:`${t}/pressed_in`,unit:"mm"})}
      ${h({label:"Flat of the peak, across",at:`${t}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${Xw(t,"It is turned")}`}function Xw(t,e){let n=o=>h({label:`About ${o}`,at:`${t}/turn/${o}`,unit:"deg",optional:!0,short:!0});return O({name:`${t} turn`,pointers:[`${t}/turn`],summary:e,body:()=>r` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var GD=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function YD(t,e){let n=`${t}/buried`,o=e===k(Ft).findIndex(l=>l.buried!==void 0),i=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),s=g("run",`${n}/placed`);return r`${E("run",n)}
  ${h({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between the embed and wall, floor, pour line and the next one.",term:o?"embed":void 0})}
  ${T({question:"When is it set in?",at:`${n}/placed`,chosen:s,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:l=>l,hint:"Pressed in, it stays where it is once the batter is at a firm trace.",term:o?"trace":void 0})}
  ${T({question:"Where in the pour?",at:t,asked_at:`${n}/arrange`,chosen:i,answers:GD,puts:l=>XD(t,l)})}
  ${i==="said"?eP(t,e):u}`}var ZD=()=>r`<svg
    class="places"
    viewBox="0 0 216 84"
    role="img"
    aria-label="From above, x is counted from the middle to the right and y to the back; from the side, the height from the floor to its lowest point."
  >
    ${S`<g class="axes"><path d="M10 14H94V70H10Z M52 42H76M76 42V26M52 14V70M10 42H94" />
      <path d="M122 20L130 70H198L206 20M178 70V52" /></g>
    <circle class="shaded decorate" cx="76" cy="26" r="7" /><circle class="shaded decorate" cx="178" cy="45" r="7" />
    <text x="60" y="52">x</text><text x="80" y="40">y</text><text x="182" y="65">height</text>
    <text x="10" y="82">from above</text><text x="130" y="82">from the side</text>`}
  </svg>`,ty={x:"",y:"",height:""};function XD(t,e){let n=ft("run",`${t}/buried`,["arrange","places"]);if(e!=="said")return{...g("run",t),buried:{...n,arrange:e}};let o=Number(g("run",`${t}/${xr(t)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>ty);return{...ft("run",t,["per_piece","per_cast"]),[ey(t)]:i.length,buried:{...n,places:i}}}var ey=t=>se()?"per_cast":xr(t)??"per_piece";function tP(t){let e=(n,o)=>{let i=["per_piece","per_cast"].reduce((s,l)=>M(s,`${t}/${l}`,void 0),n);return M(i,`${t}/${ey(t)}`,o)};return{at:`${t}/buried/places`,least:1,and:e}}function eP(t,e){let n=tP(t),o=k(n);return r`${ZD()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,s)=>{let l=`${n.at}/${s}`,d=c=>h({label:`Place ${s+1}: ${c}`,at:`${l}/${c}`,unit:"mm",short:!0});return r`<div class="part" id=${W(n,s)} role="group" aria-label="Place ${s+1} of ${wo(e)}">
        ${E("run",l)}
        <div class="row">
          ${d("x")} ${d("y")} ${d("height")} ${J(n,s,`place ${s+1} of ${wo(e)}`)}
        </div>
        ${Xw(l,`Place ${s+1} is turned`)}
      </div>`})}
    ${Y(n,"Add a place",()=>H(n,ty,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var oy=t=>`${t} made`;function nP(){let t=Gi(k(Ft).length),e=se()?{}:{per_piece:""};lt("set-up decorate");for(let n of[oy(t),`${t} where`])zt("run",n);H(Ft,{name:"",material:"",...e,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function iy(){let[t,e]=[k(Ft).length>0,k(Me).length>0];return r`${Y(Ft,t?"Add another decoration":"Add a decoration",nP)}
  ${Y(Me,e?"Add another dust":"Add a dust",Gw)}`}function sy(t){let e=Gi(t);return r` ${E("run",e)} ${aP(e)}
    <div class="row">
      ${iP(e)} ${h({label:"Spares",at:`${e}/spares`,unit:"%",short:!0})}
      ${ii(e)==="bought"?u:oP(e)}
    </div>
    ${Zw(e,t)} ${fo("run",e,wo(t))}`}var oP=t=>r`${h({label:"Lost in melting",at:`${t}/melt_loss`,unit:"%",short:!0})}
  ${h({label:"Left in the jug per tray fill",at:`${t}/left_in_jug`,unit:"g",short:!0})}
  ${h({label:"Density when set",at:`${t}/density`,unit:"g/ml",short:!0})}`;function iP(t){let e=xr(t),n=tt("run",`${t}/buried/places`).length;if(n&&n===g("run",`${t}/${e}`)&&!(se()&&e==="per_piece"))return r``;let o=e==="per_cast"?se()?"In each loaf":"In each cast":se()?"On each bar":"On each piece",i=s=>({...ft("run",t,["per_piece","per_cast"]),[s]:e?g("run",`${t}/${e}`):""});return r`${se()?T({question:"Counted by",at:t,is_told_elsewhere:!0,chosen:e,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${e?h({label:o,at:`${t}/${e}`,count:!0,short:!0}):u}`}var sP={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}},bought:{bought:{}}},ny={density:"",melt_loss:"",left_in_jug:""};function rP(t,e){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle","bought",...e==="drizzle"||e==="bought"?["on_top","buried"]:[],...e==="bought"?[...Object.keys(ny),"time_per_tray_fill"]:[]],o=ii(t)==="bought"&&e!=="bought"?ny:{};return{...ft("run",t,n),...o,...sP[e]}}function aP(t){let e=ii(t),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","bought","time_per_tray_fill"].map(o=>`${t}/${o}`);return O({name:oy(t),pointers:n,summary:"What it is and how it is made",is_needed:!e,body:()=>r` <div class="row">
          ${h({label:"What it is called",at:`${t}/name`})}
          ${h({label:e==="bought"?"What is bought":"What is melted for it",at:`${t}/material`})}
        </div>
        <p class="hint">${e==="bought"?"It has a price by the piece.":"The price goes by what is melted."}</p>
        ${T({question:"How is it made?",at:t,is_told_elsewhere:!0,chosen:e,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"],["bought","Bought, and only counted"]],puts:o=>rP(t,o)})}
        ${e?lP[e](t):u}
        ${e==="bought"?u:h({label:"To fill all trays once, setting included",at:`${t}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var lP={mould:uP,rod:t=>r`<div class="row">
      ${h({label:"Rod, diameter",at:`${t}/rod/diameter`,unit:"mm",short:!0})}
      ${h({label:"Rod, length",at:`${t}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:t=>r`<div class="row">
      ${h({label:"Area covered",at:`${t}/drizzle/area`,unit:"cm2",short:!0})}
      ${h({label:"Thickness",at:`${t}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`,bought:t=>h({label:"One weighs",at:`${t}/bought/weighs`,unit:"g",optional:!0,short:!0,hint:"Weigh ten. A label needs it."})};function uP(t){let e=g("run",`${t}/fill/depth`)===void 0?"below_brim":"depth";return r`${Ci("Cast in",`${t}/mould`,a.files?.moulds)}
  ${T({question:"Filled to a line",at:`${t}/fill`,chosen:e,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${e==="below_brim"?h({label:"Filled to, below the brim",at:`${t}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):h({label:"Filled to, above the floor",at:`${t}/fill/depth`,unit:"mm"})}
  ${T({question:"What makes one?",at:`${t}/cast_as`,chosen:g("run",`${t}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}var Fe=()=>a.plan?.piece.cost?.materials.map(t=>t.name)??[],et=t=>a.fats.find(e=>e.id===t)?.name??t,am=8;function si({key:t,label:e,offers:n,among:o,taken:i,take:s}){let l=`find-${t}`,d=a.finding?.key===t?a.finding.text:"",c=(d.trim()?dP(d,o):n).filter(w=>!i(w)),p=w=>{f({finding:void 0}),s(w)},m=d.trim(),_=m!==""&&!i(m)&&!c.some(w=>Qt(et(w))===Qt(m)),b=()=>{if(!m)return;let w=c.find(Q=>Qt(et(Q))===Qt(m)||Qt(Q)===Qt(m)),x=c.length===1?c[0]:void 0;(w??x??_)&&p(w??x??m)};return r`<div class="picker" role="group" aria-labelledby="${l}-label">
    <p class="question" id="${l}-label">${e}</p>
    <div class="field">
      <label for=${l}>Find it by its name</label>
      <input
        id=${l}
        .value=${d}
        @input=${w=>f({finding:{key:t,text:w.target.value}})}
        @keydown=${w=>{w.key==="Enter"&&b()}}
        autocomplete="off"
        spellcheck="false"
      />
    </div>
    <div class="choice">
      ${c.slice(0,am).map(w=>r`<button type="button" @click=${()=>p(w)}>${et(w)}</button>`)}
      ${_?r`<button type="button" @click=${()=>p(m)}>Add "${m}"</button>`:u}
    </div>
    ${c.length>am?r`<p class="hint">${c.length-am} more: type a part of the name.</p>`:u}
  </div>`}function dP(t,e){let n=e?[]:Fe(),o=Qt(t).split(/\s+/).filter(Boolean),i=a.fats.filter(l=>Fn(l,t)!==void 0).map(({id:l})=>l),s=l=>o.every(d=>Qt(et(l)).includes(d));return[...new Set([...n.filter(l=>s(l)||i.includes(l)),...i])]}var En="/packaging",Yi={at:En,stays:!0},ry={material:"",each_piece:""},cP={studio:void 0,own:[ry],nothing:[]},pP=()=>g("run",En)===void 0?"studio":k(Yi).length?"own":"nothing";function lm(){let t=pP();return O({name:"packaging",pointers:[En],summary:`Packaging${mP(t)}`,body:()=>r`${T({question:"What goes round each piece",at:En,is_told_elsewhere:t==="own",chosen:t,answers:[["studio","As the studio packs"],["own","Of this run's own"],["nothing","Nothing"]],puts:e=>cP[e],then:e=>e==="own"?`${En}/0/material`:En})}
      ${t==="own"?fP():u}`})}function mP(t){if(t==="studio")return"";if(t==="nothing")return": none";let e=tt("run",En).map(({material:n})=>et(String(n??""))).filter(Boolean);return e.length?`: ${e.join(", ")}`:""}var fP=()=>r`<p class="hint">In place of all that the studio packs with. Its price is that of its pack.</p>
    ${k(Yi).map((t,e)=>{let n=String(t.material||`packaging ${e+1}`);return r`<div class="row" id=${W(Yi,e)}>
        ${h({label:`Material ${e+1}`,at:`${En}/${e}/material`,hint:"As its pack or price calls it."})}
        ${h({label:`Of it, each piece ${e+1}`,at:`${En}/${e}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
        ${J(Yi,e,n)}
      </div>`})}
    ${Y(Yi,"Another material",()=>H(Yi,ry,"A material"))}`;function ay(){let t="/lye_pot",e=g("run",t)!==void 0;return!e&&!he()?u:r`<div class="labelled">
      ${pc(t,"Make one pot of lye solution for both",e,{})}${Bn("lye_solution")}
    </div>
    ${Ue("lye_solution")}
    ${e?h({label:"The empty pot weighs",at:`${t}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function ly(t){let e={at:"/bottles"},n=k(e);return O({name:"bottles",pointers:[e.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>r` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${t&&_t(t)?` Weights are of ${_t(t)}.`:""}
        </p>
        ${n.map((o,i)=>{let s=`${e.at}/${i}`,l=String(o.name)||`bottle ${i+1}`;return r`<div class="part" id=${W(e,i)} role="group" aria-label=${l}>
            <div class="part-head">
              <p class="part-title">${l}</p>
              ${J(e,i,l)}
            </div>
            ${E("run",s)}
            <div class="row">
              ${h({label:"Fragrance, as in the formulas",at:`${s}/name`})}
              ${h({label:"The bottle holds",at:`${s}/holds`,unit:"g",short:!0})}
            </div>
            ${t?hP(t,i,l):u}
          </div>`})}
        ${Y(e,"Use up a bottle",()=>H(e,{name:"",holds:""},"bottle"))}`})}function hP(t,e,n){let o=t.bottles?.[e];return o?.name!==n?u:o.parts.map((i,s)=>L({key:`bottle.${e}.${s}`,label:`Into the ${i.part.toLowerCase()}`,note:`${R(i.percent_of_batter,2)} % of the batter`,shown:nt(a.units,ht(i,"")),size:"weigh",of:`${t.place}.bottles.${e}.parts.${s}.g`}))}var Tr="/label",dm=()=>g("run",Tr)!==void 0;function uy(){let e=g("studio",Zi.studio)!==void 0?{weight_spread:""}:{market:""};lt("set-up label"),j("run","Label added",Tr,e,B("lane-label"))}function dy(){return r`${E("run",Tr)} ${gP()}
    <button type="button" @click=${()=>j("run","Label removed",Tr,void 0)}>Remove the label</button>`}var Zi={run:"/label/market",studio:"/label/market"};function cm(){let{of:t,at:e}=Vs(Zi);return r`${T({of:t,question:"Where it is sold",at:t==="run"?Tr:e,asked_at:e,chosen:g(t,e)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>t==="run"?_P(n):n})}
  ${mo("Where it is sold",[Zi])}`}function gP(){let t=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return r`${cm()}
  ${T({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:t,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:$P})}
  ${t==="weighed"?bP():r`<div class="row">
          ${h({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${h({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${h({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${cn(Zi)==="EU"||g("run",um)!==void 0?pc(um,"With the e mark",g("run",um)===!0,!0):u}`}var um="/label/e_mark";function _P(t){return{...ft("run","/label",t==="EU"?[]:["e_mark"]),market:t}}function $P(t){let e=ft("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return t==="weighed"?{...e,weighed_pieces:["","",""]}:e}function bP(){let t={at:"/label/weighed_pieces",least:3};return r`<div class="trials">
      ${k(t).map((e,n)=>r`<div class="row" id=${W(t,n)}>
            ${h({label:`Piece ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${J(t,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${Y(t,"One more piece",()=>H(t,"","piece"))}`}function cy(t){let{batches:e,fillings:n,cavities:o,to_stock:i}=t.pieces,s=t.batches.map(c=>`${xc(t)?`${c.count} of `:""}${Ve(t,c)}`),l=`Made in ${e} batches${xc(t)?": ":" of "}${jt(s)}; ${tl(n,o)}.`,d=t.batch_limits.filter(c=>c.sets);return r`<div class="batches-told of-plan">
    ${Jt(t)?r`<p><b>${l}</b></p>`:u}
    ${i>0?r`<p>
            ${K(i,t.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${d.length?r`<p><span class="called">What sets a batch:</span> ${d.map(c=>c.text).join(" ")}</p>`:u}
    ${t.around.length?r`<p><span class="called">One fewer, one more:</span> ${t.around.map(c=>c.text).join(" ")}</p>`:u}
  </div>`}var py=t=>t.map(e=>`M${e.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function my(t,e){let n=e.brim-e.floor,o=t.pour.poured_to_mm??t.pour.depth_mm,i=t.decorations?.find(c=>!c.buried&&c.cavity_fills>0),s=i?_y(i):0,l=i?i.on_top?.stands_proud_mm??1.9*s:0,d=t.pipe?wP(t,e,n,l):0;return{brim:n,line:o,topping:d,ball:s,proud:l,top:Math.max(n,(t.pipe?n:o)+d+l)}}function wP(t,e,n,o){let i=qe($(a.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let s=(t.piece.size?.height_mm??0)-n-o;if(s>1)return s;let[l,d]=Sd(e,e.brim-.01),c=Math.PI/4*(d-l)**2;return 1500*t.pipe.visible_each_ml/c}function pm(t,e){let[n,o]=Sd(t,t.brim-.01),i=(n+o)/2,s=3,l=m=>(o-n)/2*Math.sqrt(1-(m/(s+.3))**2),d=m=>-(e.brim+e.topping*m/s),c=(m,_,b)=>{let w=i+b*(Math.max(l(m),l(_))+(o-n)*.035);return`C${w} ${d(m)} ${w} ${d(_)} ${i+b*l(_)*(_?.94:1)} ${d(_)}`},p=`M${n} ${d(0)}`;for(let m=0;m<s;++m)p+=c(m,m+1,-1);p+=`L${i+l(s)*.94} ${d(s)}`;for(let m=s;m>0;--m)p+=c(m,m-1,1);return`${p}Z`}var Rr=(t,e)=>t===e?`shaded ${e}`:"plain";function yo(t,e,n=u){return r`${fy(t,e,n)}
  ${t==="decorate"&&mm(e)?r`<p class="hint">${mm(e)}</p>`:u}`}var vo=(t,e)=>r`<div class="small-view">${fy(t,e,u)}</div>`;function fy(t,e,n){let o=a.measured?.outline;if(!o)return r`<p class="drawing hint">${a.measuring_failed??"Reading the mould ..."}</p>`;let i=my(e,o),s=o.right-o.left,l=Math.max(6,s*.1),d={x:o.left-l,y:-i.top-l,w:s+2*l,h:i.top+2*l};return r`<div class="drawing">
    <svg viewBox="${d.x} ${d.y} ${d.w} ${d.h}" role="img" aria-label=${PP(t,e)}>
      ${yP(t)} ${vP(t,e,o,i)} ${xP(t,e,o,i)} ${TP()}
      ${RP(t,e,o,i)} ${DP(t,e,o,i)}
      ${S`<line class="pour-line" x1=${d.x+1} x2=${d.x+d.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${d.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${d.x+d.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function hy(t,e){let n=a.measured.outline,o=my(t,n),i=n.right-n.left,s=Math.max(6,i*.1),l=o.top+2*s;return{share:(o.top+s-e)/l,per_mm:1/l,w:i+2*s,h:l}}function yP(t){return S`<defs>
    <pattern id="hatch-${t}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${t}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${t}"><path clip-rule="evenodd" d=${py(gy())} /></clipPath>
  </defs>`}function gy(){let t=a.measured.outline;return t.loops.map(e=>e.map(([n,o])=>[n,o-t.floor]))}function vP(t,e,n,o){let i=t==="cut"?"pour":t,s=e.pour.layers??[],l=(s.length?s.map(d=>kP(d,n)):[[o.line,o.line]]).map(([d,c])=>`M${n.left} 0V${-d}L${n.right} ${-c}V0Z`);return S`<g clip-path="url(#cavity-${t})">${l.map((d,c)=>S`<path class="whole" d=${d} /><path class="${Rr(i,"pour")} band${c%3}" d=${d} />${i==="pour"&&c%2===0?S`<path fill="url(#hatch-${t})" d=${d} />`:u}`).reverse()}</g>`}function kP(t,e){let{surface:n,to_mm:o}=t;if(!n)return[o,o];let i=s=>n.over_origin_mm+n.rise_x*s+n.rise_y*e.cut_y;return[i(e.left),i(e.right)]}function xP(t,e,n,o){if(!e.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String($(a.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),s=(n.right-n.left)*i,l=(n.left+n.right)/2;return S`<g clip-path="url(#cavity-${t})"><rect class=${Rr(t,"pipe")} x=${l-s/2} width=${s}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function TP(){return S`<path class="wall" fill-rule="evenodd" d=${py(gy())} />`}function RP(t,e,n,o){let i=(n.left+n.right)/2,s=e.pipe?o.brim:o.line,l=e.decorations?.flatMap((d,c)=>(d.buried?.embeds??[]).map(p=>({embed:p,one:d,i:c})))??[];return S`
    ${e.pipe?S`<path class=${Rr(t,"pipe")} d=${pm(n,o)} />${t==="pipe"?S`<path fill="url(#dots-pipe)" d=${pm(n,o)} />`:u}`:u}
    ${t==="dust"?SP(e,n,o):u}
    ${o.ball?S`<circle class=${Rr(t,"decorate")} cx=${i} cy=${-(s+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${l.map(({embed:d,one:c,i:p})=>AP(Rr(t,"decorate"),i,d,c,p))}`}function SP(t,e,n){let o=`M${e.left} ${-n.line}H${e.right}`;return S`<path class="powder" d=${t.pipe?pm(e,n):o} />`}function AP(t,e,n,o,i){let[s,l]=[e+n.middle_mm[0],n.middle_mm[2]],d=qe($(a.run.now,`/decorations/${i}/rod/diameter`)),c=qe($(a.run.now,`/decorations/${i}/rod/length`));if(!d||!c)return S`<circle class=${t} cx=${s} cy=${-l} r=${_y(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],_=Math.min(1,Math.hypot(p,m)),b=d/2*Math.sqrt(1-_*_),w=c*_+2*b,x=-180/Math.PI*Math.atan2(m,p);return S`<rect class=${t} x=${-w/2} y=${-d/2} width=${w} height=${d} rx=${b} ry=${b?d/2:0}
    transform="translate(${s} ${-l}) rotate(${x})" />`}var _y=t=>Math.cbrt(3e3*t.volume_each_ml/(4*Math.PI));function mm(t){let e=(t.decorations??[]).filter((n,o)=>$(a.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return e.length?`Drawn as a ball of its volume, whatever its shape: ${e.join(", ")}.`:""}function DP(t,e,n,o){if(t!=="cut"||!e.cut)return u;let i=Math.max(e.cut.rows,e.cut.columns);return S`${Array.from({length:i-1},(s,l)=>{let d=n.left+(n.right-n.left)*(l+1)/i;return S`<line class="knife" x1=${d} x2=${d} y1=${-o.line} y2="0" />`})}`}function PP(t,e){let n=P(Mt(a.units,e.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[t]} is shaded. Pour line ${n} below the brim. ${mm(e)}`.trim()}var OP=t=>`set-up ${t}`;function re({name:t,title:e,drawing:n,result:o,about:i,form:s}){let l=OP(t),d=()=>Se({part:e,fold:l},s);if(Cn())return r`${d()}`;i.some(([m,_])=>Ut(m,_))&&lt(l);let c=a.open.has(l),p=Bi().filter(({folds:m})=>m.includes(l)).length;return r`<section class="lane ${t} ${c?"is-open":""}" aria-labelledby="lane-${t}">
    <div class="part-line">
      ${c||!n?u:n()}
      <div class="part-told">
        <h2 id="lane-${t}" tabindex="-1">${e}</h2>
        ${o} ${p?r`<p class="lacks">${p} still needed</p>`:u}
      </div>
      <button
        type="button"
        aria-expanded=${c?"true":"false"}
        aria-label="${c?"Close":"Change"} ${e}"
        @click=${()=>Bt("open",l)}
      >
        ${c?"Close":"Change"}
      </button>
    </div>
    ${c?r`<div class="lane-body">${d()}</div>`:u}
  </section>`}var bt=t=>r`<p class="order ${a.is_old&&a.plan?"old":""}">${t}</p>`;var $y=()=>k(Ft).length>0,by=()=>k(Me).length>0;function wy(t,e,n,o){return t?.length===e.length?t[o]:t?.find(i=>i.name===n)}function yy(t){let e=t?k(Ft).flatMap((n,o)=>xy(t,o)??[]):[];return re({name:"decorate",title:"Decorate",drawing:t&&(()=>vo("decorate",t)),result:e.length?e.map(n=>BP(t,n)):bt(vy(Ft,wo)),about:[["run",Ft.at]],form:()=>r`${t?r`<div class="side">${yo("decorate",t)}</div>`:u}
        <div class="weights">${t?k(Ft).map((n,o)=>MP(t,o)):u}</div>
        ${Ty(Ft,wo,sy)}`})}var vy=(t,e)=>`${k(t).map((n,o)=>e(o)).join(", ")}, not yet with figures.`;function MP(t,e){let n=xy(t,e);return n?CP(t,n,e):u}function ky(t){let e=t?.dust?.length?k(Me).map((n,o)=>IP(t,o)):void 0;return re({name:"dust",title:"Dust",drawing:t&&(()=>vo("dust",t)),result:e??bt(vy(Me,ru)),about:[["run",Me.at]],form:()=>r`<div class="side">${t?yo("dust",t):u}</div>
        <div class="weights">${t?k(Me).map((n,o)=>WP(t,o)):u}</div>
        ${Ty(Me,ru,Yw)}`})}var xy=(t,e)=>wy(t.decorations,k(Ft),D("run",`/decorations/${e}/name`),e);function Ty(t,e,n){return r`<div class="all-questions">
    ${k(t).map((o,i)=>r`<section class="questions" id=${W(t,i)} aria-labelledby="${W(t,i)}-title">
          <div class="part-head">
            <h3 id="${W(t,i)}-title">${e(i)}</h3>
            ${J(t,i,e(i))}
          </div>
          ${Se({part:e(i)},()=>n(i))}
        </section>`)}
  </div>`}function FP(t,e){return r`<h3>${t.name}</h3>
    ${L({key:`decorations.${e}.count`,label:"Bought, spares included",shown:[String(t.casts),""],of:`decorations.${e}.casts`})}`}function BP(t,e){if(e.bought)return bt(r`<b>${e.casts}</b> × ${e.name}, bought.`);let n=e.tray_fills>0?`, in ${e.tray_fills} tray ${e.tray_fills===1?"fill":"fills"}`:"",o=P(nt(a.units,ht(e,"make_")));return bt(r`Cast <b>${e.casts}</b> of ${e.name} ahead${n}, from <b>${o}</b> of
      ${e.material}${Jt(t.whole)?", for the whole run":""}.`)}function CP(t,e,n){return e.bought?FP(e,n):r`<h3>${e.name} ${Jt(t.whole)?r`<small>for the whole run</small>`:u}</h3>
    ${L({key:`set-up.decorations.${n}.make`,label:`Melt of ${e.material}`,shown:nt(a.units,ht(e,"make_")),of:`decorations.${n}.make_g`})}
    ${L({key:`decorations.${n}.each`,label:"Each weighs",note:`${R(e.volume_each_ml,2)} ml`,shown:q(a.units,e.mass_each_g??0,2),of:`decorations.${n}.mass_each_g`})}
    ${e.casting_s?r`<p>${co(e.casting_s)} of casting.</p>`:u} ${LP(e,n)}`}function LP(t,e){let{on_top:n,buried:o}=t;if(!n&&!o)return u;let i=l=>l===null?"not known":P(Mt(a.units,l)),s=l=>{let d=(o?.embeds??[]).map(l).filter(c=>c!==null);return d.length?P(Mt(a.units,Math.min(...d))):"nothing near"};return r`<h4>Fit of ${t.name}</h4>
    <dl class="facts">
      ${n?r`<div>
                <dt>Contact circle</dt>
                <dd>${i(n.contact_mm)}</dd>
              </div>
              <div>
                <dt>Flat of the peak</dt>
                <dd>${i(n.peak_flat_mm)}</dd>
              </div>
              <div>
                <dt>Sticks out by</dt>
                <dd>${i(n.stands_proud_mm)}</dd>
              </div>`:u}
      ${o?r`<div>
                <dt>In each</dt>
                <dd>${o.embeds.length}</dd>
              </div>
              <div>
                <dt>Least cover to the floor</dt>
                <dd>${s(l=>l.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${s(l=>l.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${s(l=>l.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${s(l=>l.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${R(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${Vo(`decorations.${e}.fit`,"How the fit is measured",`decorations.${e}.${n?"on_top":"buried"}`)}`}function IP(t,e){let n=Ry(t,e);if(!n)return u;let o=_t(t);return bt(r`<b>${P(nt(a.units,ht(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var Ry=(t,e)=>wy(t.dust,k(Me),D("run",`/dust/${e}/name`),e);function WP(t,e){let n=Ry(t,e);if(!n)return u;let o=g("run",`/dust/${e}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,s=L({key:`set-up.dust.${e}`,label:n.name,note:_t(t),shown:nt(a.units,ht(n,"")),of:`${t.place}.dust.${e}.g`});return r`${s}${i?r`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:u}`}function Sy(t){let e=t?.cut;return re({name:"cut",title:"Cut",drawing:t&&(()=>vo("cut",t)),result:e?EP(t,e):bt("Cut into bars, not yet with figures."),about:[["run","/cut"],["studio","/kerf"]],form:()=>r`${e?NP(t,e):u}
        <div class="all-questions">${J$()}</div>`})}var EP=(t,e)=>bt(r`Cut <b>${e.bars_each} bars</b> from each, ${e.columns} by ${e.rows}; a bar is
      ${P(q(a.units,t.piece.fresh_g))} on average, fresh.`);function NP(t,e){return r`<div class="side">${yo("cut",t)}</div>
    <div class="weights">
      ${L({key:"cut.bar",label:"A bar on average, fresh",note:jP(e),shown:q(a.units,t.piece.fresh_g),of:"cut.bars_each"})}
      ${L({key:"cut.offcuts",label:"Offcuts",shown:q(a.units,e.offcuts_g),of:"cut.offcuts_g"})}
      ${HP(e)}
    </div>`}function jP(t){let e=t.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...e)*10)/10,o=Math.ceil(Math.max(...e)*10)/10;return`${R(n,1)} to ${R(o,1)} g`}function HP(t){return t.one_more?.length?r`<ul class="limits">
    ${t.one_more.map(e=>r`<li>Cut to ${e.size_text} along ${e.direction}: ${e.bars} bars from each.</li>`)}
  </ul>`:u}function Ay(t){return re({name:"label",title:"Label",drawing:UP,result:bt(qP(t)),about:[["run","/label"]],form:()=>r`<div class="more">${dy()} ${t?zp(t):u}</div>`})}function qP(t){let e=t?.piece.label_g;return!t?.label||e===null||e===void 0?"A draft of the label, not yet with figures.":r`Net weight for the label <b>${P(q(a.units,e,0))}</b>, sold in the ${t.label.market}.`}var UP=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${S`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var Nn=t=>h({...t,of:"studio"});function Dy(){let t=(e,n,o)=>O({of:"studio",name:`ready ${e}`,pointers:[e],summary:r`<span>${n}<small>${pt("studio",e).join(", ")}</small></span>`,body:o});return r`<section class="questions of-studio" aria-label="Standing ready">
    <h3>Standing ready</h3>
    <div class="folds">
      ${t("/lye_solutions","Lye solutions",VP)} ${t("/blends","Melted blends of fats",YP)}
    </div>
  </section>`}var zP=["/prices","/packs","/have","/waste"],JP=t=>(e,n)=>zP.reduce((o,i)=>$(o,`${i}/${N(t)}`)===void 0?o:Ys(o,i,t,n),e);function KP(t,e){let n=i=>i===t?e:Array.isArray(i)?i.map(s=>s===t?e:s):i&&typeof i=="object"&&i.name===t?{...i,name:e}:i,o=["/pour/lye_from","/pipe/lye_from","/pour/blend","/pipe/blend"];return i=>o.reduce((s,l)=>{let d=$(s,l);return d===void 0?s:M(s,l,n(d))},i)}function Py({at:t,name:e,label:n,body:o}){let i=(l,d)=>Ne([["studio",l],["run",KP(e,d)]]),s=`${t}/${N(e)}`;return r`<div class="part" role="group" aria-label=${e}>
    <div class="part-head">
      <p class="part-title">${e}</p>
      ${Yo("studio",t,e)}
    </div>
    ${E("studio",s)}
    <div class="row">${Gs({of:"studio",at:t,name:e,label:n,also:JP(e),put:i})}</div>
    ${o}
    <div class="row">
      ${Nn({label:"Made on",at:`${s}/made_on`,date:!0,optional:!0,short:!0})}
      ${Nn({label:"Made by",at:`${s}/from`,optional:!0,short:!0})}
      ${Nn({label:"Note",at:`${s}/note`,optional:!0})}
    </div>
  </div>`}var Xi="/lye_solutions",VP=()=>r`<p class="hint">
      Lye dissolved beforehand. A run weighs it in place of dry alkali and less water; choose it there, with the base or
      the topping.
    </p>
    ${pt("studio",Xi).map(t=>Py({at:Xi,name:t,label:"What you call it",body:QP(t)}))}
    ${Ii({of:"studio",at:Xi,label:"Another solution, such as Lye jug A",add:"Add the solution",blank:{strength:"",strength_range:["",""],kept_at:""},then:t=>ot("studio",`${Xi}/${N(t)}/alkali`)})}`;function QP(t){let e=`${Xi}/${N(t)}`,n=D("studio",`${e}/alkali`),o=n||"alkali",i=D("studio",`${e}/strength`);return r`${T({of:"studio",question:"Which alkali is dissolved in it?",at:`${e}/alkali`,chosen:n||void 0,answers:[["NaOH","NaOH, sodium hydroxide"],["KOH","KOH, potassium hydroxide"]],puts:s=>s,then:()=>`${e}/strength`})}
    <div class="row">
      ${Nn({label:`Strength: pure ${o} in 100 g of the solution`,at:`${e}/strength`,unit:"%"})}
      ${Nn({label:"Coldest it stands",at:`${e}/kept_at`,hint:"With its unit: 18 \xB0C, 64 \xB0F. Strong lye crystallises in the cold."})}
    </div>
    <p role="status">${GP(i,o)}</p>
    <p class="question">By now it may be</p>
    <div class="row">
      ${Nn({label:"as weak as",at:`${e}/strength_range/0`,unit:"%",short:!0})}
      ${Nn({label:"or as strong as",at:`${e}/strength_range/1`,unit:"%",short:!0})}
    </div>
    ${E("studio",`${e}/strength_range`)}
    <p class="hint">An open jug grows stronger as water leaves it, and weaker as it takes up carbon dioxide.</p>
    ${Yt({of:"studio",at:`${e}/made_from`,name:`what ${t} is dissolved of`,title:"Dissolved by yourself",add:"I dissolve it myself",blank:{purity:""},body:()=>r`<div class="row">
            ${Nn({label:`Purity of the dry ${o}`,at:`${e}/made_from/purity`,unit:"%",short:!0})}
          </div>
          <p class="hint">It then costs what its alkali and water cost, unless it has a price of its own.</p>`})}`}function GP(t,e){let n=/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(t)?.[1],o=Number(n?.replace(",","."));if(!n||o>=100)return`As much ${e} as water is 50 %.`;let i=s=>String(Math.round(s*100)/100);return`So ${i(o)} g of pure ${e} and ${i(100-o)} g of water in 100 g.`}var Sr="/blends",YP=()=>r`<p class="hint">
      Fats melted together beforehand. A run weighs the blend in place of what it holds of the formula's fats; choose it
      there, with the base or the topping.
    </p>
    ${pt("studio",Sr).map(t=>Py({at:Sr,name:t,label:"What you call it",body:ZP(t)}))}
    ${Ii({of:"studio",at:Sr,label:"Another blend, such as Hard fats",add:"Add the blend",blank:{fats:[]},then:t=>B(`find-blend ${t}`)})}`;function ZP(t){let e={of:"studio",at:`${Sr}/${N(t)}/fats`,stays:!0},n=k(e),o=i=>n.some(s=>s.fat===i);return r`${E("studio",e.at)}
  ${n.map((i,s)=>r`<div class="row" id=${W(e,s)}>
        ${Nn({label:et(String(i.fat)),at:`${e.at}/${s}/share`,unit:"%",short:!0})}
        ${J(e,s,et(String(i.fat)))} ${E("studio",`${e.at}/${s}/fat`)}
      </div>`)}
  ${n.length?r`<p class="total" role="status">
          ${Ni("Its fats",n.map(i=>i.share))}
        </p>`:u}
  ${si({key:`blend ${t}`,label:n.length?"Another fat of it":"Which fats are in it?",offers:XP(),among:"fats",taken:o,take:i=>H(e,{fat:i,share:""},et(i))})}`}var XP=()=>[...new Set(["pour","pipe"].flatMap(t=>{let e=a.formulas[t]?.now.fats;return Array.isArray(e)?e.map(n=>String($(n,"/fat")??"")).filter(Boolean):[]}))],Oy=t=>k({of:"studio",at:`${Sr}/${N(t)}/fats`}).map(({fat:e})=>String(e)),ts=t=>{let e=g("studio",`${Xi}/${N(t)}`)??{},[n,o]=[e.alkali,e.strength].map(i=>String(i??""));return{alkali:n,words:[t,[n,o].filter(Boolean).join(" ")].filter(Boolean).join(": ")}};var Ar=t=>`/${t}/lye_from`,Dr=t=>`/${t}/blend`;function Pr(t){let e=pt("studio","/lye_solutions").length>0||g("run",Ar(t))!==void 0,n=pt("studio","/blends").length>0||g("run",Dr(t))!==void 0;if(!e&&!n)return u;let o=[...My(t),Fy(t)].filter(Boolean).join(", ");return O({name:`/${t} ready`,pointers:[Ar(t),Dr(t)],summary:`From what stands ready${o&&`: ${o}`}`,body:()=>r`${e?eO(t):u} ${n?oO(t):u}`})}function My(t){let e=g("run",Ar(t));return typeof e=="string"?[e]:tt("run",Ar(t)).map(String)}var tO=t=>tt(t,"/alkali").map(e=>String($(e,"/alkali")));function eO(t){let e=Ar(t),n=V("run",e),o=My(t),i=tO(t),s=[...new Set([...pt("studio","/lye_solutions"),...o])],l=s.filter(m=>o.includes(m)||i.includes(ts(m).alkali)),d=s.filter(m=>!l.includes(m)),c=xt("run",e),p=m=>{let{alkali:_}=ts(m),b=o.includes(m),w=o.filter(It=>It!==m&&(b||ts(It).alkali!==_)),x=b?w:[...w,m],Q=x.length>1?x:x[0];j("run",`${m}: ${b?"no":"yes"}`,e,Q)};return r`<div class="field asked ${c?"wants":""}">
    <p class="question" id="${n}-label">
      Lye solution that is weighed in place of dry ${i.length?jt(i):"alkali"}
    </p>
    <div class="choice" role="group" id=${n} tabindex="-1" aria-labelledby="${n}-label">
      ${l.map(m=>r`<button type="button" aria-pressed=${o.includes(m)?"true":"false"} @click=${()=>p(m)}>
            ${ts(m).words}
          </button>`)}
    </div>
    ${gt(n,c,o.length?void 0:"None chosen: the alkali is weighed dry.")}
    ${d.length?r`<p class="hint">Of another alkali than this formula's: ${d.map(m=>ts(m).words).join(", ")}.</p>`:u}
  </div>`}var Fy=t=>{let e=g("run",Dr(t));return typeof e=="string"?e:D("run",`${Dr(t)}/name`)};function nO(t,e){let n=tt(t,"/fats").map(({fat:s})=>String(s)),o=new Set(n.flatMap(s=>{let l=a.fats.find(({id:d})=>d===s);return l?[l.id,l.name,l.inci,...l.also_called]:[s]})),i=new Set([...o].map(s=>s.toLowerCase()));return Oy(e).every(s=>i.has(s.toLowerCase()))}var fm="\0singly";function oO(t){let e=Dr(t),n=Fy(t),o=[...new Set([...pt("studio","/blends"),...n?[n]:[]])],i=o.filter(d=>d===n||nO(t,d)),s=o.filter(d=>!i.includes(d)),l=g("run",`${e}/share`)!==void 0;return r`${T({question:"Blend of fats that is weighed",at:e,chosen:n||fm,answers:[[fm,"None: each fat by itself"],...i.map(d=>[d,d])],puts:d=>d===fm?void 0:d,hint:s.length?`With fats that this formula has not: ${s.join(", ")}.`:void 0})}
  ${n?l?r`<div class="row">
            ${h({label:`${n}: share of all fats of the formula`,at:`${e}/share`,unit:"%",optional:!0,short:!0})}
          </div>`:r`<p class="hint">As much of it is taken as the shares of its fats have room for.</p>
            <button
              type="button"
              @click=${()=>j("run","Its share",e,{name:n,share:""},ot("run",`${e}/share`))}
            >
              Take a share of my own
            </button>`:u}`}var xo="/pour/layers",ko={at:xo,in_order:!0},hm=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],lu=()=>k(ko);function iO(){let t=e=>lu().some(n=>e in n);return hm.map(([e])=>e).find(t)??(t("rest")?"depth":"parts")}function Cy(t){let e=lu(),n=iO();return e.length?r`<h3>
      Layers, lowest first ${t&&_t(t)?r`<small>${_t(t)}</small>`:u}
    </h3>
    ${T({question:"All of them by",at:xo,is_told_elsewhere:!0,chosen:n,answers:hm,puts:o=>rO(o,t)})}
    <div class="items">${e.map((o,i)=>aO(o,i,n,t))}</div>
    ${Y(ko,"One more layer on top",()=>H(ko,{name:sO(e),[n]:""},"layer"))}`:r`<p class="choice">
      ${Y(ko,"Pour it in layers",()=>H(ko,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function sO(t){for(let e=t.length+1;;++e)if(!t.some(n=>n.name===`Layer ${e}`))return`Layer ${e}`}function Ly(t,e,n){let o=t?.pour.layers?.[n];return o?.name===e.name?o:void 0}function rO(t,e){let n=lu(),o=a.is_old?void 0:e,i=(s,l)=>{let d=Ly(o,s,l);return t==="parts"||!d||t==="depth"&&"tilted"in s?"":t==="depth"?`${R(d.to_mm-d.from_mm,3)} mm`:`${R(d.mass_each_g,3)} g`};return n.map((s,l)=>{let d=au(l),c=t!=="parts"&&n.length>1&&l===n.length-1;return{...d,...c?{rest:!0}:{[t]:i(s,l)}}})}var au=t=>ft("run",`${xo}/${t}`,[...hm.map(([e])=>e),"rest"]);function aO(t,e,n,o){let i=`${xo}/${e}`,s=String(t.name)||`Layer ${e+1}`,l=Ly(o,t,e);return r`<div class="part" id=${W(ko,e)} role="group" aria-label="Layer ${s}">
    ${l&&o?lO(o,l,e):r`<p class="part-title">${s}</p>`} ${E("run",i)}
    ${dO(t,e,n,s)}
    ${o&&l?l.colours.map((d,c)=>uO(o,d,e,c)):u}
    ${O({name:i,pointers:["name","colours","tilted"].map(d=>`${i}/${d}`),summary:"Name, colours, tilt",body:()=>r` ${h({label:"Name of the layer",at:`${i}/name`})} ${fO(i,s)} ${hO(i,e)}
        ${J(ko,e,s)}`})}
  </div>`}function lO(t,e,n){return L({key:`pour.layer.${n}`,label:e.name,note:`${sc(Mt(a.units,e.to_mm-e.from_mm))} thick, ${sc(q(a.units,e.mass_each_g))} each`,shown:e.g_text===void 0?q(a.units,e.g):nt(a.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.g`})}function uO(t,e,n,o){return L({key:`pour.layer.${n}.${o}`,label:e.name,note:e.teaspoons?`about ${R(e.teaspoons,1)} tsp`:"",shown:ti(a.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.colours.${o}.g`})}function dO(t,e,n,o){if(n==="parts")return cO(t,e,o);let i="rest"in t;return r`${i?u:h({label:`${o}, ${n}`,at:`${xo}/${e}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?mO(e,n):pO(e,n)}
    >
      Takes the rest
    </button>`}function cO(t,e,n){let o=`${xo}/${e}/parts`,i=s=>()=>{f({typed:void 0}),X("run",o,Math.max(1,(Number(t.parts)||0)+s))};return r`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${h({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function pO(t,e){let n=lu().map((o,i)=>i===t?{...au(i),rest:!0}:o.rest?{...au(i),[e]:""}:o);j("run","takes the rest",xo,n)}function mO(t,e){let n=`${xo}/${t}`;j("run","amount of the layer",n,{...au(t),[e]:""},ot("run",`${n}/${e}`))}function fO(t,e){let n={at:`${t}/colours`,in_order:!0};return r`${k(n).map((o,i)=>{let s=`${n.at}/${i}`,l=String(o.name)||`colour ${i+1}`;return r`<div class="part" id=${W(n,i)} role="group" aria-label="${l} in ${e}">
      <div class="part-head">
        <p class="part-title">Colour: ${l}</p>
        ${J(n,i,l)}
      </div>
      ${E("run",s)}
      <div class="row">
        ${h({label:"Colour",at:`${s}/name`})}
        ${h({label:"Rate",at:`${s}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${h({label:"Bulk density (for spoons)",at:`${s}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${fo("run",s,l)}
    </div>`})}
  ${Y(n,"Add a colour",()=>H(n,{name:"",rate:""},"colour"))}`}var By=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function hO(t,e){let n=`${t}/tilted`,o=g("run",`${n}/low_side`);return e===k(ko).length-1&&g("run",n)===void 0?r`<p class="hint">The last layer is poured level.</p>`:Yt({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>r`${h({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${T({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:By,puts:s=>s})}
        ${O({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!By.some(([s])=>s===o),body:()=>h({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var Ze=()=>$(a.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function gm(t,e){let n=t.pour.depth_mm+t.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(e*2)/2),Math.floor(n*2)/2-.5),i=Ze()==="depth"?n-o:o;f({typed:void 0}),X("run",`/pour/line/${Ze()}`,`${R(i,2)} mm`)}function Iy(t){let e=t.pour.depth_mm+t.pour.below_brim_mm,n=qe($(a.run.now,`/pour/line/${Ze()}`));return n===void 0?t.pour.below_brim_mm:Ze()==="depth"?e-n:n}function gO(t,e){let n=t.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(t.pointerId);let i=l=>e((l.clientY-t.clientY)/o.height),s=()=>{n.removeEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.removeEventListener(l,s)};n.addEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.addEventListener(l,s)}function _O(t){if(!a.measured)return u;let e=t.pour.depth_mm+t.pour.below_brim_mm,n=Iy(t),{share:o,h:i}=hy(t,e-n),s=c=>gO(c,p=>gm(t,n+p*i)),l=c=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[c.key];p!==void 0&&(c.preventDefault(),gm(t,n+p))},d=c=>c&&(c.style.top=`${100*o}%`);return queueMicrotask(()=>d(document.querySelector(".line-handle")??void 0)),r`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(e)}
    aria-valuenow=${R(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${P(Mt(a.units,n))} below the brim"
    @pointerdown=${s}
    @keydown=${l}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function $O(t){let{pour:e}=t,n=P(Mt(a.units,e.below_brim_mm)),o=e.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=t.cut?"the loaf":"each",s=_t(t);return bt(r`${o}, <b>${P(q(a.units,e.mass_each_g))}</b> ${i}; make
      <b>${P(q(a.units,e.make_g))}</b>${s?` for ${s}`:""}.`)}var Wy=()=>Ze()==="depth"?"Depth":"Below brim";function Ey(t){return re({name:"pour",title:"Pour",drawing:t&&(()=>vo("pour",t)),result:t?$O(t):bt(`${bO()}.`),about:[["run","/pour"]],form:()=>r`${t?wO(t):yO()}
        <div class="more">
          ${uu("pour")} ${Pr("pour")} ${Cy(t)} ${ml("pour")}
        </div>`})}function bO(){let t=D("run",`/pour/line/${Ze()}`);return t?`${t} ${Ze()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function wO(t){let{pour:e}=t,n=`${t.place}.pour`,o=i=>()=>gm(t,Iy(t)+i);return r`<div class="side">
      ${yo("pour",t,_O(t))} ${Ny(t)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${h({label:Wy(),at:`/pour/line/${Ze()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${L({key:"pour.each",label:"Weigh into each",shown:q(a.units,e.mass_each_g),note:`${R(e.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${L({key:"pour.mm",label:"1 mm more or less",shown:Ct(a.units,e.ml_per_mm,2),note:`${un(e.ml_per_mm*e.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${L({key:"set-up.pour.make",label:"Base to make",note:_t(t),shown:q(a.units,e.make_g),of:`${n}.make_g`})}
      ${L({key:"pour.density",label:"Density",shown:[`${e.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var yO=()=>r`<div class="side">
    ${Ny()} ${E("run","/pour/line")}
    ${h({label:Wy(),at:`/pour/line/${Ze()}`,unit:"mm"})}
  </div>`,uu=t=>r`<button type="button" @click=${()=>ne(t)}>
    Change the formula of the ${t==="pour"?"base":"topping"}
  </button>`;function Ny(t){let e=n=>{if(n===Ze())return;let o=t&&!a.is_old?t.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;j("run","pour line","/pour/line",{[n]:o===void 0?"":`${R(o,3)} mm`})};return ut("The pour line is measured",Ze(),[["below_brim","From the brim"],["depth","From the floor"]],e)}var vO=[0,50,80,100];function jy(t){let e=t?.pipe;return re({name:"pipe",title:"Pipe",drawing:e&&(()=>vo("pipe",t)),result:e?kO(t,e):bt("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>e?xO(t,e):TO()})}function kO(t,e){let n=_t(t);return bt(r`Pipe <b>${R(e.volume_each_ml,0)} ml</b> on each, ${P(q(a.units,e.mass_each_g))} at this
      whipped density; make <b>${P(q(a.units,e.make_g))}</b>${n?` for ${n}`:""}.`)}function xO(t,e){return r`<div class="side">
      ${yo("pipe",t)}
      ${L({key:"pipe.each",label:"Topping on each",shown:Ct(a.units,e.volume_each_ml),note:`${R(e.in_headspace_each_ml,1)} ml of it below the brim`,of:`${t.place}.pipe.volume_each_ml`})}
      ${L({key:"set-up.pipe.make",label:"Topping to make",note:_t(t),shown:q(a.units,e.make_g),of:`${t.place}.pipe.make_g`})}
      ${L({key:"pipe.density",label:"Whipped density",note:`overrun ${R(e.overrun_percent,0)} %`,shown:[`${e.density_g_per_ml} g/ml`,""],of:`${t.place}.pipe.density_g_per_ml`,term:"overrun"})}
      ${uu("pipe")} ${Pr("pipe")}
    </div>
    <div class="weights">${Kc(e)} ${zy()} ${RO(t)} ${MO(t)}</div>
    <div class="more">${Jc(e)} ${zc()}</div>`}var Or=t=>t===0?"pipe":`pipe.whipping${t}`,Mr=(t,e)=>`${t.place}.pipe.whippings.${e}`;function Hy(t,e){let n=Xa(t,e);return n?r`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function TO(){return r`<div class="more">${Jc()}</div>
    <div class="side">${zy()} ${g("run","/pipe/whip_now")===void 0?u:Uy()}</div>
    <div class="weights">${Kc()} ${uu("pipe")} ${Pr("pipe")}</div>
    <div class="more">${zc()}</div>`}var qy=t=>_t(t)?r`<small>${_t(t)}</small>`:u;function RO(t){return r`<h3>Today's bowl ${qy(t)}</h3>
    ${Uy()} ${t.whippings.map((e,n)=>SO(t,e,n))}`}function SO(t,e,n){let o=e.pieces_now,i=o==null?0:e.pieces-o,s=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${e.pieces} to make.`;return r`${Hy(t,e)}
  ${o==null?u:L({key:`${Or(n)}.now`,label:"Enough for",note:s,shown:[K(o,"piece"),""],size:"weigh",of:`${Mr(t,n)}.pieces_now`})}
  ${DO(t,e,n)}`}function Uy(){let t=g("run","/pipe/whip/holds"),e=t===void 0?or():{holds:t,net:""};return Yt({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:e,body:AO})}function AO(){return r`<div class="row">
    ${h({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${ir("/pipe/whip_now")}
  </div>`}function DO(t,e,n){return e.readings?.length?O({name:`${Or(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>PO(t,e,n)}):u}function PO(t,e,n){return r`<table class="readings">
      <caption>
        If the weigh-cup reads
      </caption>
      <thead>
        <tr>
          <th scope="col">net</th>
          <th scope="col">overrun</th>
          <th scope="col">pipes</th>
        </tr>
      </thead>
      <tbody>
        ${e.readings?.map(o=>r`<tr class=${o.planned?"planned":""}>
              <th scope="row">${R(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${R(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${Vo(`${Or(n)}.readings`,"Show the calculation",`${Mr(t,n)}.readings`)}`}function zy(){let t="/pipe/fills_headspace",e=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(D("run",t))?.[1]?.replace(",",".")),n=Ut("run",t);return r`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${po("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${vO.map(o=>r`<button
            type="button"
            aria-pressed=${o===e?"true":"false"}
            @click=${()=>X("run",t,`${o} %`)}
          >
            ${OO(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${h({label:"Headspace filled, as a share",at:t,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function OO(t){let e=52*(t/100);return r`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${S`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-e/2} y="18" width=${e} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function MO(t){let e=t.whippings.map(i=>({one:i,words:FO(i)})).filter(({words:i})=>i),n=t.whippings[0],o=n?.limits??[];return!n||!o.length&&!e.length?u:r`<h3>Limits of whisk, bowl and time ${qy(t)}</h3>
    ${e.map(({one:i,words:s})=>r`${Hy(t,i)}
          <p>${s}.</p>`)}
    <ul class="limits">
      ${o.map(i=>r`<li class=${i.sets?"binds":""}>
            ${i.sets?r`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${Vo("pipe.limits","How the limits come about",`${Mr(t,0)}.limits`)}`}function FO({piping_s:t,lye_spoonfuls:e}){return[t?`${co(t)} of piping`:"",e?`${e.count} spoonfuls of lye, ${co(e.altogether_s)}`:""].filter(Boolean).join("; ")}function Ky(t){return re({name:"lye",title:"Lye",drawing:CO,result:t?Jy(t).map(BO):bt("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>r`${t?r`<div class="more jugs">${Jy(t).map(LO)} ${WO(t)}</div>`:u}
        <div class="more">${ay()} ${ly(t)}</div>`})}function Jy(t){let{pieces:e}=t.batch,n={slot:"pour",title:t.pipe?"Lye for the base":"Lye",batter:t.pour,place:`${t.place}.pour`,pieces:e,key:"pour"},o=t.whippings.map((i,s)=>{let l=Xa(t,i);return{slot:"pipe",title:`Lye for the topping${l&&`, ${l}`}`,batter:i,place:Mr(t,s),pieces:e,key:Or(s)}});return[n,...o]}function BO({title:t,batter:e,slot:n,pieces:o}){let i=lo(n,o).length?" \u26A0":"";return bt(r`${t}: ${R(e.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${oe(e.superfat_percent.effective)}${i}</b>.`)}var CO=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${S`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function LO({slot:t,title:e,batter:n,place:o,pieces:i,key:s}){let{effective:l}=n.superfat_percent,d=lo(t,i).length>0,c=`danger-set-up-${s.replaceAll(".","-")}`,p=s===t;return r`<div class="jug">
    <h3>${e} <small>${n.formula}</small></h3>
    ${L({key:`set-up.${s}.strength`,label:"Lye strength",note:`water ${R(n.water_to_pure_alkali,2)} : 1 to alkali; water ${R(n.water_percent_of_fats,1)} % of the fats`,shown:[`${R(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${L({key:`set-up.${s}.superfat`,label:"Superfat as weighed",shown:[`${oe(l)}${d?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`,term:s==="pour"?"superfat_as_weighed":void 0})}
    ${Hs(t,c,i)} ${Vy(n.superfat_percent)} ${IO(n,o,s)}
    ${!p||g(t,"/superfat")===void 0?u:h({label:"Planned superfat",of:t,at:"/superfat",unit:"%",described_by:d?c:void 0,hint:a.formulas[t]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function Vy(t){let{low:e,high:n,likely_low:o,likely_high:i,uncertainties:s}=t,l=`It lies between ${oe(e)} and ${oe(n)}, as lots, purity and scales may fall`,d=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${oe(o)} and ${oe(i)}.`,c=s[0],p=c?r` Most of the doubt is ${c.cause}: ${c.remedy}.`:u;return ic(e)?r`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${l}${d}
    ${c?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:r`<p class="aside of-plan">${l}${d} Some fat is left over even at the lowest.${p}</p>`}function IO(t,e,n){return t.heat?r`${Qy(t.heat)} ${Vo(`${n}.heat`,"How the heat is worked out",`${e}.heat`)}`:u}function Qy(t){let e=i=>P(B_(a.units,i)),n=t.cooling.map(i=>`${i.shortest_min*60?co(i.shortest_min*60):"at once"} to ${co(i.longest_min*60)} in ${i.in}`),o=t.peak_c===null?"The KOH solution warms as it is diluted; how far is not known.":`Water at ${e(t.water_at_c)}: the lye may reach ${e(t.peak_c)}; it boils at ${e(t.boils_at_c)}.`;return r`<p class="aside of-plan">
    ${o}${n.length?` To cool: ${n.join("; ")}.`:""}${t.at_pour_c===null?"":` Lye and fats meet at about ${e(t.at_pour_c)}.`}
  </p>`}function WO(t){let e=t.lye_pot;if(!e)return u;let{units:n}=a,o=(i,s,l,d,c="")=>L({key:`pot.${i}`,label:s,note:c,shown:l,size:"weigh",of:`${t.place}.lye_pot.${d}`});return r`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${R(e.strength_percent,1)} %${_t(t)&&`; ${_t(t)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",nt(n,ht(e,"water_")),"water_g")}
    ${e.alkalis.map((i,s)=>o(`alkali.${s}`,`In the pot: ${i.name}`,nt(n,ht(i,""),"down"),`alkalis.${s}.g`))}
    ${o("lye","Lye solution in the pot",nt(n,ht(e,"lye_")),"lye_g",EO(e))}
    ${e.shares.map((i,s)=>r`${o(`share.${s}`,`Out of it for ${i.batter}`,nt(n,ht(i,"lye_"),"down"),`shares.${s}.lye_g`,`superfat then ${oe(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${s}`,`and plain water to ${i.batter}`,nt(n,ht(i,"top_up_")),`shares.${s}.top_up_g`):u}
        ${Hs(s===0?"pour":"pipe","",t.batch.pieces)}
        ${i.superfat?Vy(i.superfat):u}`)}
    ${e.left_g?r`<p class="aside of-plan">
            ${P(nt(a.units,{g:e.left_g,g_text:e.left_g_text,oz_text:e.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${e.heat?Qy(e.heat):u}
  </div>`}function EO(t){if(t.full_pot_g===null)return"";let{g_text:e,oz_text:n,...o}=ht(t,"lye_"),i=nt(a.units,{...o,g:t.full_pot_g,g_text:t.full_pot_g_text,oz_text:t.full_pot_oz_text});return`${P(i)} with the pot: make up with water to that after cooling`}var Fr=new Map,NO=()=>Fr.clear(),jO=t=>typeof t?.owned=="number"?t.owned:void 0;function _m(t){let e=ee(t,a.files?.moulds);return Fr.has(e)||(Fr.set(e,void 0),HO(e)),Fr.get(e)}async function HO(t){try{Fr.set(t,jO(wt((await Wt(t)).text))),G()}catch(e){if(!(e instanceof y))throw e}}async function Gy(t,e){let n=_m(t);n!==void 0&&(X("studio",e,n),F(`${n} kept in the studio`),await qO(ee(t,a.files?.moulds)),ct())}async function qO(t){let e=await Pt(te,t);e.shipped||e.theirs||(Ot(e,M(e.now,"/owned",void 0)),await on(e),NO())}var du=["monday","tuesday","wednesday","thursday","friday","saturday","sunday"],cu=t=>t[0].toUpperCase()+t.slice(1),pu=t=>h({...t,of:"studio"});function Yy(){return!Cn()&&a.run.file&&a.open.has("folded studio days")&&Bl("run"),r`<section class="questions of-studio" aria-label="Making days">
    <h3>Making days</h3>
    ${O({of:"studio",name:"days",pointers:["/days",...Ge()?[]:["/work"]],summary:r`<span>When you work${r`<small>${UO()}</small>`}</span>`,body:zO})}
  </section>`}function UO(){let t=g("studio","/days/making")??{};return du.filter(e=>t[e]).map(e=>`${cu(e)} ${String(t[e])}`).join(", ")}var zO=()=>r`<p class="hint">
      Hours on each day that you make, cast and pack; blank on days without. A run's days are planned into them.
    </p>
    <div class="row">
      ${du.map(t=>pu({label:cu(t),at:`/days/making/${t}`,unit:"h",optional:!0,takes_part:!0,short:!0}))}
    </div>
    ${E("studio","/days")} ${E("studio","/days/making")} ${JO()} ${KO()} ${QO()}
    ${Ge()?r`<p class="hint">How long a batch, a piece and packing take you stands under Work.</p>`:r`<p class="question">How long the work takes you</p>
            <div class="row">${Cl(g("studio","/days")!==void 0)}</div>
            ${E("studio","/work")}`}`;function JO(){let t="/days/small_jobs",e=V("studio",t),n=tt("studio",t),o=l=>{let d=du.filter(p=>p===l!==n.includes(p)),c=p=>Ln(M(p,t,d.length?[...d]:void 0),"/days");fe("studio",`${cu(l)}: ${n.includes(l)?"no":"yes"}`,c)},i=Ut("studio",t),s=du.filter(l=>n.includes(l)||!D("studio",`/days/making/${l}`));return r`<div class="field asked ${i?"wants":""}">
    <p class="question" id="${e}-label">Other days on which you are there to unmould, cut and set to chill</p>
    <div class="choice" role="group" id=${e} tabindex="-1" aria-labelledby="${e}-label">
      ${s.map(l=>r`<button type="button" aria-pressed=${n.includes(l)?"true":"false"} @click=${()=>o(l)}>
            ${cu(l)}
          </button>`)}
    </div>
    ${gt(e,i,"Without any, these wait for a making day.")}
  </div>`}var Br={of:"studio",at:"/days/off",and:t=>Ln(t,"/days")};function KO(){return r`<p class="question">Days off and holidays</p>
    ${k(Br).map((t,e)=>VO(String(t),e))}
    ${Y(Br,"Add a day off",()=>H(Br,"","A day off"))}`}function VO(t,e){let n=`/days/off/${e}`,[o,i=""]=t.split("/"),s=V("studio",n),l=xt("studio",n),d=(m,_)=>X("studio",n,_&&_!==m?`${m}/${_}`:m),c=(m,_,b,w)=>r`<div class="field short ${l?"wants":""}">
      <label for=${m}>${_}</label>
      <input
        id=${m}
        type="date"
        .value=${A(b)}
        @input=${x=>w(x.target.value)}
        @blur=${Go}
        aria-invalid=${l?"true":"false"}
        aria-describedby=${l?`${s}-said`:u}
      />
      ${m===s?gt(s,l):u}
    </div>`,p=o?`off on ${U(o)}`:`day off ${e+1}`;return r`<div class="row" id=${W(Br,e)} role="group" aria-label=${p}>
    ${c(s,"First day off",o,m=>d(m,i))}
    ${c(`${s}-last`,"Last, if there are several",i,m=>d(o,m))} ${J(Br,e,p)}
  </div>`}function QO(){let t=(e,n,o)=>pu({label:n,at:`/days/${e}`,count:!0,optional:!0,short:!0,hint:o});return r`<p class="question">What limits the work of a day; left blank, it sets no limit</p>
    <div class="row">
      ${t("pots_owned","Pots for the base")} ${t("bowls_owned","Bowls for the topping")}
      ${t("used_a_day","Uses of each on a day","Once, if blank; washed up in between.")}
      ${t("rack_places","Pieces that can cure at once")}
      ${pu({label:"Decorations cast beforehand by at most",at:"/days/cast_beforehand",unit:"days",optional:!0,short:!0})}
    </div>
    ${GO()}
    ${$(g("studio","/days"),"/making")===void 0&&g("studio","/days")!==void 0?r`<p class="hint">Without the hours of a making day these are of no use.</p>`:u}`}var GO=()=>Yt({of:"studio",at:"/days/one_lye_a_day",name:"the shared lye",title:"One pot of lye solution for several batches of a day",add:"Make one pot of lye solution for a day's batches",blank:{holds:"",saves:""},body:()=>{let t=(e,n,o,i={})=>pu({label:n,at:`/days/one_lye_a_day/${e}`,unit:o,short:!0,...i});return r`<p class="hint">Made the evening before and shared by weight, where the batches' lyes are alike.</p>
        <div class="row">
          ${t("holds","Pot holds","l",{hint:"To the brim; filled to half."})}
          ${t("saves","Each further batch takes less by","min")}
          ${t("pot_tare","Empty pot","g",{optional:!0,hint:"Where the full one is weighed with it."})}
        </div>`}});var YO={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},Zy=t=>({run:t,studio:t}),$m=t=>Zy(`/losses/${t}`);function bm(t,e){return YO[t].map(({name:n,label:o,unit:i,optional:s})=>Lt(Zy(`/losses/${t}/${n}`),{label:e?`${e}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:s}))}var wm={holds:"",paid:""},mu=t=>({of:"studio",at:`/packs/${N(t)}`,in_order:!0,and:(e,n)=>n?e:Li(Ln(e,"/packs"),[`/serves_as/${N(t)}`])});function tv(t){let e=a.fats.find(n=>n.id===t||n.name===t);return e?[e.id,e.name,e.inci,...e.also_called]:[t]}function ev(t,e){let n=new Set(tv(e).map(o=>o.toLowerCase()));return pt("studio",t).find(o=>n.has(o.toLowerCase()))}var ri=t=>ev("/packs",t),nv=t=>Fe().includes(t)||a.fats.some(e=>e.id===t)?"g":void 0,ov="money packs";function iv(t){return r`${pt("studio","/packs").map(e=>ZO(e,t))}
  ${si({key:"pack",label:"Which material comes in packs?",offers:Fe(),taken:e=>ri(e)!==void 0,take:fu})}`}function ZO(t,e){let n=mu(t),o=et(t);return r`<div class="part" role="group" aria-label="Packs of ${o}">
    <p class="part-title">${o}</p>
    ${k(n).map((i,s)=>tM(n,s,o,nv(t),e))}
    <div class="row">
      ${Y(n,r`Another pack of ${o}`,()=>H(n,wm,`A pack of ${o}`))}
      ${h({of:"studio",label:"Lost beside the batch",at:`/waste/${N(t)}`,unit:"%",optional:!0,takes_part:!0,short:!0})}
      ${XO(t)}
    </div>
  </div>`}var Xy=t=>`/serves_as/${N(t)}`;function XO(t){let e=Xy(t),n=D("studio",e),o=new Set(tv(t)),i=[...new Set([...Fe(),...pt("studio","/packs")])].filter(l=>!o.has(l)&&g("studio",Xy(l))===void 0),s=l=>d=>Ln(M(d,e,l||void 0),"/serves_as");return!n&&(Fe().some(l=>o.has(l))||!i.length)?u:$t({label:"Another make of",of:"studio",at:e,answers:i.map(l=>[l,et(l)]),unsaid:"nothing: a material of its own",optional:!0,take:l=>fe("studio",`${et(t)}: ${l?et(l):"a material of its own"}`,s(l))})}function tM(t,e,n,o,i){let s=`${t.at}/${e}`,l=(c,p,m={})=>h({of:"studio",label:p,at:`${s}/${c}`,short:!0,...m}),d=g("studio",`${s}/density`)!==void 0||Ut("studio",`${s}/holds`);return r`<div class="row" id=${W(t,e)} role="group" aria-label="Pack ${e+1} of ${n}">
    ${l("holds","One pack holds",{unit:o,hint:o?void 0:"Such as 50 pieces, or 1 kg"})}
    ${l("paid","Paid for it",{told:i})} ${eM(s)}
    ${l("as_of","Day of the price",{optional:!0,date:!0})}
    ${d?l("density","Density of what it holds",{unit:"g/ml",optional:!0}):u}
    ${J(t,e,`pack ${e+1} of ${n}`)}
  </div>`}function eM(t){let e=`${t}/from`,n=pt("studio","/sellers");return n.length?$t({label:"From",of:"studio",at:e,answers:n.map(o=>[o,o]),unsaid:"not given",optional:!0}):h({of:"studio",label:"From",at:e,optional:!0,short:!0})}function fu(t){let e=`/packs/${N(t)}`,[n,o]=[`/prices/${N(t)}`,`/money/prices/${N(t)}`],i=Ji().length?g("run",o):void 0,s=[i,g("studio",n)].flatMap(oM),l=s.length?[...s,wm]:[wm];Ne([["studio",c=>nM(M(Li(c,[n]),e,l))],...i!==void 0?[["run",c=>Li(c,[o])]]:[]]),F(s.length?`The price of ${et(t)} is its first pack now`:`${et(t)} added`),zt("studio",ov),I(ze(W(mu(t),l.length-1)))}var nM=t=>$(t,"/currency")?t:M(t,"/currency",Wl());function oM(t){let e=$(t,"/paid");if(!e)return[];let n=$(t,"/confirmed");return[{holds:$(t,"/for")??"",paid:e,...n===void 0?{}:{confirmed:n}}]}var sv=t=>r`<button
    type="button"
    aria-label="Another pack size of ${et(t)}"
    @click=${()=>fu(t)}
  >
    Another pack size
  </button>`;function rv(t){let e=ri(t),n=tt("studio",mu(e).at).length,o=()=>{zt("studio",ov),I(ze(W(mu(e),0)))};return r`<div class="row">
    <p>${et(t)}: by ${n===1?"its pack":`its ${n} packs`}</p>
    <button type="button" aria-label="To its packs: ${et(t)}" @click=${o}>To its packs</button>
  </div>`}function av(){let t=e=>`/have/${N(e)}`;return r`${pt("studio","/have").map(e=>{let n=nv(e),o=n?void 0:"Such as 12 pieces, or 1 kg";return r`<div class="row">
      ${h({of:"studio",label:et(e),at:t(e),unit:n,hint:o,short:!0})}
      ${Yo("studio","/have",e,et(e))}
    </div>`})}
  ${si({key:"have",label:"Which material stands on the shelf?",offers:Fe(),taken:e=>ev("/have",e)!==void 0,take:e=>j("studio",`${et(e)} added`,t(e),"",ot("studio",t(e)))})}`}var lv=({key:t})=>`money ${t}`;function cv(){if(!Ge())return u;let t=sM(Wl());return!Cn()&&t.some(e=>a.open.has(`folded studio ${lv(e)}`))&&Dl(),r`<section class="questions money of-studio" aria-label="Buying and selling">
    <h3>Buying and selling</h3>
    ${iM()}
    <div class="folds">
      ${t.map(e=>O({of:"studio",name:lv(e),pointers:e.pointers,summary:r`<span>${e.title}${e.told?r`<small>${e.told}</small>`:u}</span>`,body:e.body}))}
    </div>
  </section>`}var iM=()=>g("run","/money/currency")===void 0?u:r`<div class="row">
        ${ai({label:"Currency of the studio",at:"/currency",optional:!0,short:!0})}
      </div>`,ai=t=>h({...t,of:"studio"}),hu=t=>pt("studio",t).map(et).join(", ");function sM(t){let e=(i,s,l={})=>ai({label:s,at:i,told:t,short:!0,...l}),n=(i,s)=>e(i,s,{optional:!0,takes_part:!0}),o=(i,s="")=>{let l=D("studio",i);return l&&`${l}${s}`};return[{key:"packs",title:"Packs",pointers:["/packs","/waste","/serves_as"],told:hu("/packs"),body:()=>iv(t)},{key:"sellers",title:"Sellers",pointers:["/sellers"],told:hu("/sellers"),body:()=>aM(e)},{key:"have",title:"On the shelf",pointers:["/have"],told:hu("/have"),body:av},{key:"packaging",title:"Packaging",pointers:["/packaging"],told:k(es).map(i=>et(String($(i,"/material")))).join(", "),body:uM},{key:"work",title:"Work",pointers:["/work"],told:o(ei("paid_an_hour"),` ${t} an hour`),body:()=>cM(e)},{key:"overhead",title:"Overhead",pointers:["/overhead"],told:o("/overhead/each_batch",` ${t} each batch`),body:()=>r`<p class="hint">Rent, power, cleaning and the like.</p>
          <div class="row">
            ${n("/overhead/each_batch","Each batch")} ${n("/overhead/each_piece_made","Each piece made")}
          </div>`},{key:"tax",title:"Tax on sales",pointers:["/tax"],told:o("/tax/rate"),body:pM},{key:"fees",title:"Fees of selling",pointers:["/fees"],told:o("/fees/of_price"," of the price"),body:()=>r`<div class="row">
          ${ai({label:"Of what the buyer pays",at:"/fees/of_price",unit:"%",optional:!0,takes_part:!0,short:!0})}
          ${n("/fees/each_order","Each order")}
        </div>`},{key:"asking",title:"Ways of selling",pointers:["/asking","/price_endings"],told:hu("/asking"),body:()=>mM(e)}]}var rM=t=>(e,n)=>Object.entries(e.packs??{}).reduce((o,[i,s])=>s.reduce((l,{from:d},c)=>d===t?M(l,`/packs/${N(i)}/${c}/from`,n):l,o),e);function aM(t){let e=(n,o)=>`/sellers/${N(n)}/${o}`;return r`${pt("studio","/sellers").map(n=>r`<div class="part" role="group" aria-label=${n}>
        <div class="part-head">
          <p class="part-title">${n}</p>
          ${Yo("studio","/sellers",n)}
        </div>
        <div class="row">
          ${Gs({of:"studio",at:"/sellers",name:n,label:"Seller's name",also:rM(n)})}
          ${t(e(n,"postage"),"Postage of an order",{optional:!0,hint:"0 if you fetch it"})}
          ${t(e(n,"postage_free_from"),"Free from",{optional:!0})}
          ${ai({label:"From ordering to having it",at:e(n,"lead_time"),unit:"days",optional:!0,short:!0})}
        </div>
      </div>`)}
  ${Ii({of:"studio",at:"/sellers",label:"Another seller, by name",add:"Add the seller",blank:{},then:n=>ot("studio",e(n,"postage"))})}`}var es={of:"studio",at:"/packaging"},lM=t=>!Fe().includes(t)&&!a.fats.some(e=>e.id===t);function uM(){let t=e=>k(es).some(n=>$(n,"/material")===e);return r`<p class="hint">What goes round each piece that is sold. Its price is that of its pack.</p>
    ${k(es).map((e,n)=>dM(String($(e,"/material")??""),n))}
    ${si({key:"packaging",label:"What goes round a piece?",offers:["/packs","/prices"].flatMap(e=>pt("studio",e)).filter(lM),taken:t,take:e=>H(es,{material:e,each_piece:""},e)})}`}function dM(t,e){let n=ri(t)!==void 0||g("studio",`/prices/${N(t)}`)!==void 0;return r`<div class="row" id=${W(es,e)}>
    ${ai({label:`${et(t)}, each piece`,at:`/packaging/${e}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
    ${n?u:r`<button type="button" aria-label="Say its price: ${t}" @click=${()=>fu(t)}>
            Say its price
          </button>`}
    ${J(es,e,t)}
  </div>`}function cM(t){let e=g("studio","/work")!==void 0;return r`<div class="row">
      ${t(ei("paid_an_hour"),"Paid an hour",{optional:!0,takes_part:!0,is_due:e})} ${Cl()}
    </div>
    ${E("studio","/work")}`}var uv=(t,e)=>T({of:"studio",question:t,at:`/tax/${e}`,chosen:D("studio",`/tax/${e}`)||void 0,answers:[["with tax","With tax"],["without tax","Without tax"]],puts:n=>n}),pM=()=>r`<p class="hint">Where you charge it and get back what you pay of it. If you are exempt, leave it out.</p>
    ${Yt({of:"studio",at:"/tax",name:"the tax",title:"Tax on sales",add:"I charge tax",blank:{rate:""},body:()=>r`<div class="row">${ai({label:"Rate",at:"/tax/rate",unit:"%",short:!0})}</div>
          ${uv("The prices you pay are","prices_paid")} ${uv("The prices you ask are","prices_asked")}`})}`,dv=[["margin","A margin"],["markup","A markup"],["price","A price as set"]];function mM(t){let e=n=>`/asking/${N(n)}`;return r`${pt("studio","/asking").map(n=>fM(n,e(n),t))}
  ${Ii({of:"studio",at:"/asking",label:"Another way, such as retail",add:"Add the way",blank:{},then:n=>ot("studio",e(n))})}
  ${hM(t)}`}function fM(t,e,n){let o=g("studio",e)??{},i=dv.map(([l])=>l).find(l=>o[l]!==void 0),s=l=>ai({label:l,at:`${e}/${i}`,unit:"%",short:!0});return r`<div class="part" role="group" aria-label=${t}>
    <div class="part-head">
      <p class="part-title">${t}</p>
      ${Yo("studio","/asking",t)}
    </div>
    <div class="row">${Gs({of:"studio",at:"/asking",name:t,label:"What you call it"})}</div>
    ${T({of:"studio",question:"Its price comes by",at:e,chosen:i,answers:dv,puts:l=>({[l]:""}),then:l=>`${e}/${l}`})}
    ${i?r`<div class="row">
            ${i==="price"?n(`${e}/price`,"Price of a piece"):s(i==="margin"?"Margin, of the price":"Markup, on the cost")}
          </div>`:u}
  </div>`}var Cr={of:"studio",at:"/price_endings"},hM=t=>r`<p class="question">A price ends in</p>
    ${k(Cr).map((e,n)=>r`<div class="row" id=${W(Cr,n)}>
          ${t(`/price_endings/${n}`,`Ending ${n+1}`,{hint:"Such as 0.90"})}
          ${J(Cr,n,`ending ${n+1}`)}
        </div>`)}
    ${Y(Cr,"Add an ending",()=>H(Cr,"","An ending"))}`;var gM=t=>rt()&&ri(t)===void 0&&Ji().length>0;function pv(){if(!Ge())return r`<button type="button" @click=${_M}>Add what you paid</button>`;let t=(e,n)=>{let o=`/${N(e)}/${n}`;return{run:Il.run+o,studio:Il.studio+o}};return r`<div class="row">
      ${Lt($n,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${Fe().map(e=>ri(e)===void 0||g("run",t(e,"paid").run)!==void 0?r`<div class="row">
              ${Lt(t(e,"paid"),{label:`${et(e)}, paid`,optional:!0,takes_part:!0,short:!0})}
              ${Lt(t(e,"for"),{label:`for how much ${et(e)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
              ${gM(e)&&cn(t(e,"paid"))?sv(e):u}
            </div>`:rv(e))}
    </div>
    ${Fe().length?u:r`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function _M(){let t=rt()?"studio":"run",e=t==="studio"?$n.studio:$n.run;j(t,"Prices added",e,"",ot(t,e))}var ns=t=>({run:t,studio:t}),ym=t=>({run:`/pipe/${t}`,studio:`/${t}`}),$M=ns("/scales"),mv=ns("/spoilage"),bM=ns("/pots");function vm(t){return re({name:"studio",title:"My studio",result:bt(wM()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>yM(t)})}function wM(){let t=a.beside.studio?.file;return t?r`What is the same in every run, kept in ${t}.`:r`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function yM(t){let e=vM(t),n=[...e.flatMap(o=>o.all),...se()?[fl]:[]];return r`${rt()?u:r`<p class="choice">
              <button type="button" class="strong" @click=${()=>{hc(n)}}>
                Keep these in my studio
              </button>
            </p>
            <p class="hint">
              They go into studio.json beside your runs; every run then takes from it what it does not say. Packs and
              sellers, your work, tax, fees and ways of selling can then be kept there too.
            </p>`}
    <div class="studio-sections">
      ${e.map(({title:o,all:i,body:s})=>r`<section class="questions" aria-label=${o}>
            <div class="part-head">
              <h3>${o}</h3>
              ${mo(o,i)}
            </div>
            ${s()}
          </section>`)}
    </div>
    ${rt()?r`${cv()} ${Dy()} ${Yy()}`:u}`}function vM(t){let e=he(),n=[{title:"Scales",all:[$M],body:kM},{title:"Losses",all:[$m("pour"),...e?[$m("pipe")]:[]],body:()=>xM(e,t)},{title:"Rejects",all:[mv],body:RM},{title:"Pot and lye jug",all:[bM],body:SM},{title:"Moulds owned",all:fv().map(({shared:o})=>o),body:DM},{title:"Prices paid",all:Ji(),body:pv}];return e&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(ym),body:AM},{title:"Weigh-cups",all:[],body:j$}),rt()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[Zi],body:cm}),n}function kM(){let t=(e,n)=>r`${Lt(ns(`/scales/${e}/step`),{label:`${n}, smallest step`,unit:"g",short:!0,term:e==="large"?"scale_step":void 0})}
    ${Lt(ns(`/scales/${e}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return r`<div class="row">${t("large","Large scale")} ${t("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function xM(t,e){return r`<div class="row">
      ${bm("pour",t?"Base":void 0)} ${t?bm("pipe","Topping"):u}
    </div>
    ${e?TM(e):u}`}function TM({pour:t,pipe:e,...n}){let o=_t({pour:t,pipe:e,...n}),i=(s,{in_pieces_g:l,lost_g:d})=>`${s}: ${P(q(a.units,l))} in the pieces, ${P(q(a.units,d))} lost.`;return r`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",t)} ${e?i("Topping",e):""}
  </p>`}var RM=()=>Lt(mv,{label:"Rejects",unit:"%",short:!0,optional:!0,term:"rejects"});function SM(){let t=(e,n,o)=>Lt(ns(`/pots/${e}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return r`<div class="row">
    ${t("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${t("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function AM(){let t=(n,o,i,s=!1)=>Lt(ym(n),{label:o,unit:i,short:!0,optional:!0,is_due:s,takes_part:n!=="bag_holds"}),e=n=>cn(ym(n))!==void 0;return r`<div class="row">
    ${t("bowl/holds","Bowl holds","l",e("bowl/whisk_needs"))}
    ${t("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${t("bag_holds","One bag holds","ml")}
    ${t("lye_spoon/holds","Lye spoon holds","ml",e("lye_spoon/time_between"))}
    ${t("lye_spoon/time_between","From one spoonful to the next","s",e("lye_spoon/holds"))}
  </div>`}function fv(){return["/pour",...k(Ft).map((e,n)=>Gi(n))].flatMap(e=>{let n=D("run",`${e}/mould`);return n?[{mould:n,shared:{run:Vw(e),studio:`/moulds_owned/${N(gc(n))}`}}]:[]})}function DM(){return r`<div class="row">
    ${fv().map(({mould:t,shared:e})=>{let n=a.files?.moulds.find(s=>s.file===t)?.name??t,o=cn(e)===void 0?_m(t):void 0,i=()=>{Gy(t,`/moulds_owned/${N(gc(t))}`)};return r`${Lt(e,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&rt()?r`<button type="button" aria-label="Move it into my studio: ${o} of ${n}" @click=${i}>
              Move it into my studio
            </button>`:u}`})}
  </div>`}function km(t){let e=t&&Wi(t);return r`${OM(t)}
    <div class="set-up">${hv(e)} ${PM()} ${vm(e)}</div>`}function hv(t){return r`${Ey(t)} ${he()?jy(t):u}
  ${$y()?yy(t):u} ${by()?ky(t):u}
  ${se()?Sy(t):u} ${Ky(t)} ${dm()?Ay(t?.whole):u}`}function PM(){return r`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${he()?u:r`<button type="button" @click=${H$}>Add a topping</button>${q$()}`}
      ${iy()} ${z$()}
      ${dm()?u:r`<button type="button" @click=${uy}>Draft the label</button>`}
    </div>
  </section>`}function gv(t=u){return r`<div class="row">
    ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${Ci("Mould","/pour/mould",a.files?.moulds)}
    ${Ci("Base","/pour/formula",a.files?.formulas)}
    ${he()?Ci("Topping","/pipe/formula",a.files?.formulas):u} ${t}
  </div>`}function OM(t){return r`<section class="order-of" aria-labelledby="run-title">
    ${typeof a.run.now.note=="string"?r`<p class="aside">${a.run.now.note}</p>`:u}
    ${gv(t?MM(t):u)}
    <div class="batches">${t?cy(t):u} ${rm()} ${lm()}</div>
  </section>`}function MM(t){let{sell:e,make:n,fillings:o,cavities:i,casts:s,batches:l}=t.pieces,d=Jt(t)?`${l} batches, ${K(o,"filling")}`:tl(o,i);return L({key:"pieces.make",label:t.cut?"Bars to make":"Pieces to make",note:s!==n?`${s} ${t.cut?"loaves":"casts"}, ${d}`:d,shown:[String(n),e===n?"":`for ${e}`],size:"weigh",of:"pieces.make"})}function FM(){let e=(a.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>a.formulas[n]).filter(BM);return[Se({part:"Run"},()=>[gv(),rm(),lm()]),...e.map(n=>Se({part:String(a.formulas[n].now.name||"Formula")},()=>Ab(n))),hv(),vm()]}var BM=(t,e,n)=>n.findIndex(o=>a.formulas[o]===a.formulas[t])===e;H_(FM);var CM={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function _v(t){let e=s=>s.severity==="danger",n=[...t.cautions.filter(e),...t.cautions.filter(s=>!e(s))],o=s=>r`<ul>
      ${s.map(l=>r`<li class=${l.severity}><strong>${CM[l.severity]??l.severity}</strong> ${l.text}</li>`)}
    </ul>`,i=n.filter(s=>s.severity==="note");return r`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(s=>s.severity!=="note"))}
    ${i.length?r`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}var xm="begin-title";function $v(t){let{record:e}=a;if(e.run!==a.run.file||e.version===void 0)return u;let{number:n,since:o}=t,i=o===void 0?void 0:Jo(n,o);if(i)return LM(i,t);if(e.beginning?.batch===n)return IM(e.beginning,t);let s=()=>{Mw(n),I(B(xm)),requestAnimationFrame(()=>document.querySelector(".begin-record.asked")?.scrollIntoView({block:"nearest"}))};return r`<div class="begin-record">
    <button type="button" class=${t.is_due?"strong":""} @click=${s}>Lye is mixed: begin the record</button>
  </div>`}function LM(t,{show:e}){let{told:n}=a.record,o=()=>{zo(t.begun.id),e()};return r`<div class="begin-record is-begun">
    ${ou(t)}
    <button type="button" class="strong" @click=${o}>Note what happens</button>
    ${n?.batch===t.begun.id&&n.remarks.length?r`<ul class="begin-remarks" role="status">
            ${n.remarks.map(i=>r`<li>${i}</li>`)}
          </ul>`:u}
  </div>`}function IM(t,e){let{number:n,words:o,seen:i,is_struck:s}=e,l=Jo(n),{complaint:d,is_asking:c}=t,p=!s&&!c&&!Yn(n);return r`<div class="begin-record asked" role="group" aria-labelledby=${xm}>
    <p id=${xm} tabindex="-1"><b>Begin the record of ${o}?</b> Its plan is kept with it as it is weighed.</p>
    ${l?WM(l,e):u}
    <div class="row">
      <div class="field">
        <label for="code-to-begin">Code on the mould</label>
        <input
          id="code-to-begin"
          autocomplete="off"
          .value=${A(t.code)}
          aria-describedby="code-to-begin-said"
          @input=${m=>Fw(m.target.value)}
        />
        <p class="hint" id="code-to-begin-said">Left blank: the day and the next letter.</p>
      </div>
      <button type="button" class="strong" ?disabled=${!p} @click=${()=>{Gp(i)}}>
        ${c?"Beginning ...":l?"Begin another making":"Begin the record"}
      </button>
      <button type="button" @click=${Qp}>Not yet</button>
    </div>
    ${s?r`<p class="complaint">The weights are not those of what is typed.</p>`:u}
    ${d?EM(d,i):u}
  </div>`}var WM=(t,{show:e})=>r`<p>
      There is a record of it already, <b>${t.begun.code}</b>: ${vr(t)}. If this is the same soap, go on
      in that one.
    </p>
    <p>
      <button
        type="button"
        @click=${()=>{Qp(),zo(t.begun.id),e()}}
      >
        Go on in ${t.begun.code}
      </button>
    </p>`;function EM(t,e){let n=t.choices??[];return r`<div role="alert">
    <p class="alarm">
      ${n.length||t.field==="begin"?`${t.problem}.`:`${C(t)}.`}
    </p>
    ${n.map(o=>r`<button type="button" class="answer" @click=${()=>{Bw(o,e)}}>
          ${NM(o)}
        </button>`)}
  </div>`}function NM(t){let{confirmed:e,lot:n}=t;return t["beyond-stock"]?`There is more than the records say: take it of lot ${t["beyond-stock"]}`:n?`Take ${n}`:`It is so: ${e??""}`}function bv(t,e){let n=t?.batches.findIndex(({numbers:l})=>l.includes(e))??-1;if(!t||n<0)return;let o=t.batches[n],i=e===1,s=o.weigh_out.filter(({vessel:l})=>l!=="melt"||i);return{plan:t,batch:o,place:`batches.${n}`,vessels:s,mark:o.mark}}function os(t){let e=Gn(t);return e?.finished_at?"done":e||Yn(t)?"under way":"not begun"}var jM=()=>Math.max(a.plan?.pieces.batches??0,...a.bench.batches.map(({batch:t})=>t));function HM(t){let{chosen:e}=a.bench;if(e!==void 0&&e<=t)return e;let n=Array.from({length:t},(i,s)=>s+1),o=i=>n.find(s=>os(s)===i);return o("under way")??o("not begun")??1}function Tm(){let t=jM(),e=HM(t),n=Gn(e),o=bv(a.plan,e);return{number:e,of:t,kept:n,planned:o,weights:n?bv(n.plan,e):o}}var bn=({kept:t})=>!t&&a.is_old,is=({plan:t,batch:e})=>t.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===e.pieces));var qM=6,UM={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function yv({number:t,of:e}){if(e<2)return u;let n=Array.from({length:e},(i,s)=>s+1),o=i=>`Batch ${i}, ${os(i)}`;return e>qM?r`<select
      aria-label="Which batch is weighed"
      @change=${i=>wv(Number(i.target.value))}
    >
      ${n.map(i=>r`<option value=${i} ?selected=${i===t}>${o(i)}</option>`)}
    </select>`:ut("Which batch is weighed",String(t),n.map(i=>[String(i),r`<span class="status" aria-hidden="true">${UM[os(i)]}</span> ${i}<small>
          ${os(i)}</small
        >`]),i=>wv(Number(i)))}function wv(t){Vh(t),F(`Batch ${t}, ${os(t)}`)}var gu="";function vv(t){let{kept:e,number:n}=t;if(!e)return u;if(e.finished_at)return zM(t,e.finished_at);let i=(t.weights?.vessels??[]).flatMap(l=>l.rows).filter(({key:l})=>!Zn(n,l).is_done).length,s=()=>i?kv(e.id):void fd(n);return r`<div class="batch-end">
    <p class="aside">Begun ${Tv(e.begun_at)}; its weights stay as they were then.</p>
    ${gu===e.id?xv(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{fd(n)}):r`<button type="button" class=${i?"":"strong"} ?disabled=${Yn(n)} @click=${s}>
            This batch is done
          </button>`}
  </div>`}function zM({kept:t,number:e},n){let{id:o}=t;return r`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${Tv(n)}.</p>
    ${gu===o?xv("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{Rs(e)}):r`<button type="button" @click=${()=>kv(o)}>Start this batch anew</button>`}
  </div>`}function kv(t){gu=t,G(),I(B("batch-stays"))}function xv(t,e,n){let o=()=>{gu="",G(),I(B("run-title"))};return r`<p><b>${t}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${e}</button>
    </div>`}var JM=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),Tv=t=>JM.format(new Date(t));var KM={pour:"Base",pipe:"Topping"},Rv=t=>new Map(t.flatMap(e=>e.rows.map(n=>[n.key,{row:n,vessel:e}])));function Sv(t,e){let[n,o]=[Rv(t),Rv(e)],i=[...t,...e].some(({batter:p})=>p==="pipe"),s,l=({row:p,vessel:m})=>{let _=!i||m.batter===s;return s=m.batter,(_||!s?"":`${KM[s]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},d=[...n].flatMap(([p,m])=>{let _=o.get(p)?.row;return _?.shown===m.row.shown?[]:[`${l(m)} ${m.row.shown}, ${_?`now ${_.shown}`:"now left out"}`]}),c=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${l(p)}, now ${p.row.shown}`);return[...d,...c]}var Rm=3,Sm=new Map,Am="";function VM(t){let{kept:e,weights:n,planned:o,of:i}=t;if(!e||e.finished_at||!n)return;let{complaint:s}=a;if(s&&!Km(s))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:C(s)};if(!o){if(!a.plan)return;let p=i>1?`the run has no batch ${t.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let l=Sv(n.vessels,o.vessels),d=new Set(is(n).map(({text:p})=>p)),c=is(o).flatMap(({text:p})=>d.has(p)?[]:[p]);return l.length||c.length?{told:l,dangers:c,mark:o.mark}:void 0}function Av(t){let e=VM(t),{kept:n}=t;if(!e||!n)return u;if(Sm.get(n.id)===e.mark)return YM(n.id);let o=e.dangers.length>0||e.refusal!==void 0;return r`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${QM(e)}
    </p>
    ${GM(e)}
    ${e.dangers.map(i=>r`<p class="danger"><strong>${pe}</strong> As it is now: ${i}</p>`)}
    ${Am===n.id?tF(t):ZM(t,e)}
  </div>`}function QM({told:t,refusal:e}){if(e!==void 0)return r`<strong>No weights can be given as it is now:</strong> ${e}.`;let n=t.length-Rm;return r`${t.slice(0,Rm).join("; ")}${n>0?` and ${n} more.`:"."}`}var GM=({told:t})=>t.length>Rm?r`<details>
        <summary>All ${t.length} changes</summary>
        <p>${t.join("; ")}.</p>
      </details>`:u;function YM(t){return r`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(Sm.delete(t),G())}>What has changed</button>
  </div>`}function ZM(t,{mark:e,refusal:n}){let{id:o}=t.kept;return r`<div class="row">
    <button type="button" class="strong" @click=${()=>{Sm.set(o,e),G(),I(B("run-title"))}}>Keep weighing</button>
    ${n===void 0?r`<button type="button" @click=${()=>XM(t)}>Start this batch anew</button>`:u}
  </div>`}function XM(t){let{ticks:e,weigh_cup:n,id:o}=t.kept;if(!Object.keys(e).length&&n===void 0)return void Rs(t.number);Am=o,G(),I(B("keep-weighing"))}function tF(t){let e=Object.keys(t.kept.ticks).length,n=()=>{Am="",G(),I(B("run-title"))},o=()=>{n(),Rs(t.number)};return r`<p>
      <b>${e===1?"The 1 tick":`All ${e} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var Dv=({text:t})=>r`<p class="danger"><strong>${pe}</strong> ${t}</p>`;function Pv(t){let e=new Set(a.dangers.run.map(({text:o})=>o)),n=is(t).filter(({text:o})=>!e.has(o));return n.length?r`<div class="dangers" role="alert">${n.map(Dv)}</div>`:u}var eF=({vessel:t})=>["lye","lye_pot","share"].includes(t),nF=({batter:t},e)=>!t||!e.batter||t===e.batter;function Ov(t,e){if(!eF(e))return u;let n=is(t).filter(o=>nF(o,e));return n.length?r`<div class="dangers">${n.map(o=>r`${Dv(o)} ${oF(o)}`)}</div>`:u}function oF({batter:t,topic:e}){return!t||e==="heat"?r`<button type="button" class="to-cause" @click=${sF}>To the cautions</button>`:r`<button type="button" class="to-cause" @click=${()=>iF(t)}>
    To the superfat of the ${t==="pour"?"base":"topping"}
  </button>`}function iF(t){ne(t),requestAnimationFrame(()=>I(ot(t,"/superfat")))}function sF(){f({view:"watch"}),I(B("watch-title"))}var Dm=(t,e)=>r`<p class="do ${bn(t)?"old":""}">${e}</p>`;function Mv(t,{batch:e,plan:n}){let{below_brim_mm:o,mass_each_g:i}=e.pour,s=o<.05?"Pour to the brim":`Pour to ${P(Mt(a.units,o))} below the brim`;return Dm(t,r`${s}, <b>${P(q(a.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function Fv(t,{batch:e}){let n=e.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?Dm(t,r`Whip until the level weigh-cup holds <b>${P(q(a.units,n.net_g))}</b>.`):u}function Bv(t,{batch:e}){let{pipe:n}=e;return n?Dm(t,r`Pipe <b>${R(n.volume_each_ml,0)} ml</b> on each, ${P(q(a.units,n.mass_each_g))} at the
      planned whipped density.`):u}function Cv(t,{shown:e,beside:n}){if(t==="both")return[e,n];let o=t==="us"?"oz":"g";return[Re(n)===o?n:e,""]}function Lv(t,e,n){if(e.vessel==="share"&&!t.batch.lye_pot&&n.role==="lye_solution")return aF(t,e,n);let o=rF(t,e,n);return o===void 0?void 0:{place:o}}function rF({batch:t,plan:e,place:n,vessels:o},i,s){switch(i.vessel){case"fats":case"lye":case"batter":return Wv(i,s,t,n);case"layers":return uF(s,t.pour.layers??[],`${n}.pour.layers`);case"dust":return Pm(s.name,t.dust,`${n}.dust`);case"lye_pot":return s.role==="water"||s.role==="ice"?`${n}.lye_pot.water_g`:Pm(s.name,t.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let l=o.filter(d=>d.vessel==="melt");return l.length===e.decorations.length?`decorations.${l.indexOf(i)}.make_g`:void 0}case"share":return lF(i,s,t,n)}}function aF({vessels:t},e,n){let o=t.find(s=>s.vessel==="lye"&&s.key===e.key.replace(/\.share$/,".lye"));return o?{working:{of:e.key,formula:"all of the lye solution = all that was weighed for it; what evaporated since is made up with plain water",with:o.rows.map(({name:s,shown:l})=>({name:s,value:l,from:o.title})),comes_to:n.shown,sources:[]}}:void 0}var Iv=({key:t})=>Number(/^pipe\.(\d+)\./.exec(t)?.[1]??1)-1;function lF(t,e,n,o){let i=(n.pipe?.whippings??[]).slice(0,Iv(t)),s=t.batter==="pipe"?i.reduce((l,{count:d})=>l+d,1):0;return e.role==="lye_solution"?`${o}.lye_pot.shares.${s}.lye_g`:e.role==="water"?`${o}.lye_pot.shares.${s}.top_up_g`:Wv(t,e,n,o,"lye")}function Pm(t,e,n){let o=e.findIndex(i=>i.name===t);return o<0?void 0:`${n}.${o}.g`}function Wv(t,e,n,o,i=t.vessel){let s=Iv(t),[l,d]=t.batter==="pipe"?[n.pipe?.whippings[s],`${o}.pipe.whippings.${s}`]:[n.pour,`${o}.pour`],c=(l?.ingredients??[]).findIndex(({name:p,goes_into:m,role:_})=>m===i&&(p===e.name||e.role==="ice"&&_==="water"));return c<0?void 0:`${d}.ingredients.${c}.g`}function uF(t,e,n){let o=(e??[]).findIndex(({name:i})=>i===(t.adding??t.name));return o<0||!t.adding?o<0?void 0:`${n}.${o}.g`:Pm(t.name,e[o].colours,`${n}.${o}.colours`)}function Om(t,e,n){let o=n.words.filter(({is_order:s})=>s),i=n.rows.every(({key:s})=>Zn(t.number,s).is_done);return r`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${Ev(n)}>
    <div class="vessel-head">
      <h3 id=${Ev(n)}>
        ${n.title}${n.times?r` <b>${n.times} times</b>`:u}${n.day_before?r` <b>the day before</b>`:u}${i?r` <span class="all-in">✓ all in</span>`:u}
      </h3>
      ${o.map(({text:s})=>r`<p class="vessel-order">${s}</p>`)}
    </div>
    ${Ov(e,n)}
    ${ol(n.rows,({key:s})=>s,s=>dF(t,e,n,s))}
  </section>`}var Ev=({key:t})=>`vessel-${t.replaceAll(".","-")}`;function dF(t,e,n,o){let{is_done:i,is_waiting:s}=Zn(t.number,o.key),[l,d]=Cv(a.units,o),c=bn(t),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return r`<div class="weigh ${o.role} ${i?"done":""} ${s?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${A(i)}
        ?disabled=${t.kept?.finished_at!==void 0}
        @change=${_=>cF(t,e,o,_.target)}
      />
      <span class="name"
        >${o.name}${m?r` <small>${m}</small>`:u}${s?r` <small class="not-kept">not kept yet</small>`:u}</span
      >
      ${o.running_shown?r`<span class="running">total ${o.running_shown}</span>`:u}
      <span class="amount ${c?"old":""}"><b>${l}</b>${d?r` <i>${d}</i>`:u}</span>
    </label>
    ${pF(t,e,n,o)}
  </div>`}function cF(t,{mark:e},n,o){if(!bn(t))return zh(t.number,e,n.key,o.checked);o.checked=!o.checked,F("Not ticked: what is struck through is not to be weighed.")}function pF(t,e,n,o){let{planned:i}=t,s=i?.mark===e.mark?i.vessels.find(({key:m})=>m===n.key):void 0,l=i&&s&&Lv(i,s,o);if(!l)return u;let d=`weigh.${t.number}.${o.key}`,c=a.open.has(d),p=`sum-${d.replaceAll(/[^\w]/g,"-")}`;return r`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>Bt("open",d)}
    >
      ${c?"\u2013":"="}
    </button>
    ${c?r`<div class="sum" id=${p}>${"place"in l?uc(l.place):Ja(l.working)}</div>`:u}`}function Mm(t,e){let n=t.flatMap(({title:o,words:i})=>i.filter(({is_order:s})=>!s).map(({text:s})=>({title:o,text:s})));return r`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${e} ${n.map(({title:o,text:i})=>r`<p><b>${o}:</b> ${i}</p>`)}
  </details>`}function Nv(t,e){let{planned:n,whip_today:o}=a;return!e||!n?void 0:(o?.of===n&&o.batch===t&&o.reading===e||mF(t,e),o?.batch===t&&o.reading===e?o:void 0)}var Fm=!1;async function mF(t,e){let{planned:n}=a;if(Fm||!n)return;Fm=!0;let o={of:n,batch:t,reading:e},i={holds:$(n.run,"/pipe/whip/holds")??"",net:e};try{let s=await Nr({...n,run:M(n.run,"/pipe/whip_now",i)});f({whip_today:{...o,...fF(s,t)}})}catch(s){if(!(s instanceof y))throw s;f({whip_today:{...o,complaint:C(s.complaint)}})}finally{Fm=!1}}function fF(t,e){let n=t.batches.find(({numbers:o})=>o.includes(e));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var Cm,Bm,hF=t=>Cm??(Re(t)==="oz"||!t&&a.units==="us"?"oz":"g");function jv(t,e){let n=e.batch.pipe?.whippings??[];if(!n.some(l=>l.readings.length))return u;let o=Ho(t.number),i=hF(o),s=t.kept?.finished_at!==void 0;return r`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${Bn("weigh_cup")}</div>
    ${Ue("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${A(Bm??o)}
        ?disabled=${s}
        @input=${l=>Bm=l.target.value}
        @change=${l=>_F(t,e,l.target.value,i)}
      />
      ${ut("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],gF)}
    </div>
    ${$F(t,e,n,o)} ${wF(e,n)}
  </div>`}function gF(t){Cm=t,G()}function _F(t,{mark:e},n,o){Bm=void 0;let i=kt(n)?`${n.trim()} ${o}`:n.trim();if(Cm=void 0,i===Ho(t.number))return G();if(bn(t))return F("Not taken: the weights are not those of what is typed."),G();Jh(t.number,e,i),t.kept&&Pa(Jo(t.number,t.kept.begun_at),i)}function $F(t,e,n,o){if(!o)return u;let i=Nv(t.number,o);return i?i.complaint!==void 0?r`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==e.mark?r`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:r`<div class="today" role="status">
    ${n.map((s,l)=>r`<p>${bF(s,i.pieces?.[l]??null)}</p>`)}
  </div>`:r`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function bF({pieces:t,count:e},n){if(n===null)return u;let o=e>1?"Each of these bowls pipes":"This bowl pipes",i=t-n;return r`${o} <b>${K(n,"piece")}</b> now.
    ${i>0?r`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${t} to make.`}`}function wF(t,e){let n=t.plan.cut?"casts":"pieces";return r`<details class="cup-table">
    <summary>If the weigh-cup reads something else</summary>
    ${e.map(o=>r`<table class="readings">
          <caption>
            A bowl for ${o.pieces}
          </caption>
          <thead>
            <tr>
              <th scope="col">net</th>
              <th scope="col">overrun</th>
              <th scope="col">pipes, ${n}</th>
            </tr>
          </thead>
          <tbody>
            ${o.readings.map(i=>r`<tr class=${i.planned?"planned":""}>
                  <th scope="row">${P(q(a.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${R(i.overrun_percent,0)} %</td>
                  <td>${t.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var Lr="pour",Hv=()=>Tm().kept!==void 0;function qv(t){da(),xa();let e=Tm(),n=a.bench.version!==void 0||a.bench.failed!==void 0;return r`<section class="weighing" data-part=${Lr} aria-labelledby="run-title">
    ${yF(e)} ${kF(e)}
    ${e.weights&&n?r`${Pv(e.weights)} ${Av(e)} ${xF(e,e.weights,t)}`:u}
    ${e.weights&&n&&!Lm(e)?zv(e,e.weights,t):u}
    ${vv(e)}
  </section>`}function yF(t){let{weights:e}=t;return r`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${e?.plan.run??String(a.run.now.name??"")}</h1>
    ${e?r`<p class="which">${vF(t,e)}</p>`:u}
    <div class="row">
      ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${yv(t)}
    </div>
  </div>`}function vF(t,{plan:e,batch:n,vessels:o}){let i=o.flatMap(d=>d.rows),s=i.filter(({key:d})=>Zn(t.number,d).is_done).length,l=t.of>1?`Batch ${t.number} of ${t.of}: `:"";return r`<b>${l}${Ve(e,n)}</b>, ${s} of ${i.length} weighed`}function kF({number:t,weights:e}){let{failed:n,unsent:o,told:i,complaints:s,version:l}=a.bench,d=o!==void 0&&Yn(t);return r`<div class="bench-told" role="status">
    ${i?.batch===t?r`<p class="alarm">${i.words}</p>
            <button type="button" @click=${Qh}>I have looked</button>`:u}
    ${d?r`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
    ${n!==void 0?r`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:u}
    ${s.map(c=>r`<p class="alarm">${c}</p>`)}
    ${e||n!==void 0?u:r`<p class="hint">
            ${a.complaint?"No weights before this is corrected.":l===void 0?"Reading ...":""}
          </p>`}
  </div>`}function xF(t,e,n){let{vessels:o}=e,i=m=>o.filter(_=>_.batter===m),s=i(),l=s.filter(m=>m.day_before),d=s.filter(m=>!m.day_before),c=i("pipe").length>0,p=m=>m.map(_=>Om(t,e,_));return r`${PF(c,s)}
    <div class="batters ${c?"two":""}">
      ${_u("ahead","To have ready",p(l))}
      ${_u("base",c?"Base":"Batter",TF(t,e,i("pour"),l,n))}
      ${c?_u("topping","Topping",[...p(i("pipe")),AF(t,e),Mm(i("pipe"),SF(t,e))]):u}
      ${_u("after","At the end",p(d))}
    </div>`}var Uv=({vessel:t})=>t==="lye"||t==="lye_pot";function Lm(t){let n=(t.weights?.vessels??[]).filter(o=>Uv(o)&&o.batter!=="pipe").flatMap(o=>o.rows);return n.length>0&&n.every(({key:o})=>Zn(t.number,o).is_done)}var zv=(t,{plan:e,batch:n,mark:o},i)=>$v({number:t.number,words:`${t.of>1?`batch ${t.number} of ${t.of}`:"this batch"}, ${Ve(e,n)}`,seen:o,since:t.kept?.begun_at,is_struck:bn(t),is_due:Lm(t),show:i}),_u=(t,e,n)=>n.some(o=>o!==u)?r`<div class="part-of ${t}">
        <h2 id="weigh-${t}">${e}</h2>
        ${n}
      </div>`:u;function TF(t,e,n,o,i){let s=({vessel:p})=>p==="layers",l=p=>p.map(m=>Om(t,e,m)),d=n.filter(p=>!s(p)),c=d.map(Uv).lastIndexOf(!0);return[...l(d.slice(0,c+1)),Lm(t)?zv(t,e,i):u,...l(d.slice(c+1)),Mv(t,e),...l(n.filter(s)),Mm([...o,...n],RF(t,e))]}var Jv=(t,e,n=u)=>r`<p class=${bn(t)?"old":""}>
    <b>Superfat as weighed:</b> ${e.map(o=>oe(o.superfat_percent.effective)).join(", ")} ${n}
  </p>`,RF=(t,{batch:e})=>Jv(t,[e.pour],po("superfat_as_weighed")),SF=(t,{batch:e})=>Jv(t,e.pipe?.whippings??[]),AF=(t,e)=>r`${Fv(t,e)} ${jv(t,e)} ${Bv(t,e)}`,DF={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function PF(t,e){let n=[...new Set(e.flatMap(({vessel:i})=>DF[i]??[]))].join(", ").toLowerCase(),o=[["pour",t?"Base":"Batter"],...t?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?u:(o.some(([i])=>i===Lr)||(Lr="pour"),r`<div class="narrow">${ut("What is shown",Lr,o,OF)}</div>`)}function OF(t){Lr=t,G(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var Kv=()=>r`${Ui(Hv()?"No new weights can be given.":void 0)} ${qv(()=>{$e("record")})}`;var MF={"set-up":km,watch:_v,money:vw,days:bw,mould:Uw,print:Kw};function Vv(t){let e=r`${sa().map(o=>mn(o))} ${ia().map(fn)}`;if(t==="weigh")return r`${e} ${Kv()}`;if(t==="record")return r`${e} ${Ew(()=>{$e("weigh")})}`;let{plan:n}=a;return r`${e} ${Ui()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(a.run.now.name??"")}</h1>
    ${n?MF[t](n):FF(t)}`}function FF(t){return a.complaint?t==="set-up"?km():r`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:r`<p class="hint">Reading the run ...</p>`}var BF=()=>{f({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function Gv(){let t=a.new_run;if(!t)return r`<p class="choice"><button type="button" class="strong" @click=${BF}>New run</button></p>`;let{name:e,mould:n,formula:o}=t,i=hl(t.sell),s=e.trim()&&n&&o&&i,l=()=>{dt(async()=>{await Ia({name:e.trim(),mould:n,formula:o,sell:i}),f({new_run:void 0})})};return r`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${A(e)}
          @input=${d=>v(t,{name:d.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${Qv(t,"mould","Mould",CF())} ${Qv(t,"formula","Base",LF())}
      ${gl("new-run-sell",t.sell,d=>v(t,{sell:d}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${l}>Make the run</button>
      <button type="button" @click=${()=>f({new_run:void 0})}>Cancel</button>
    </div>
    ${s?u:r`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var CF=()=>[...(a.files?.moulds??[]).filter(t=>!t.shipped).map(t=>[t.file,t.name||t.file]),...a.catalogue.map(t=>[t.path,t.name])],LF=()=>(a.files?.formulas??[]).map(t=>[t.file,t.name||t.file]);function Qv(t,e,n,o){let i=`new-run-${e}`;return r`<div class="field choose">
    <label for=${i} data-said="required">${n}</label>
    <select id=${i} @change=${l=>v(t,{[e]:l.target.value})}>
      <option value="" .selected=${A(t[e]==="")}>choose ...</option>
      ${o.map(([l,d])=>r`<option value=${l} .selected=${A(l===t[e])}>${d}</option>`)}
    </select>
  </div>`}var IF=(t,e)=>(e.changed??"").localeCompare(t.changed??"");function Zv(){let t=a.files?.runs??[],e=t.filter(o=>!o.shipped).sort(IF),n=t.filter(o=>o.shipped);return r`${Pe("Runs")} ${Gv()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${e.length?Qe(e,Yv):r`<p class="aside">No runs of your own in ${a.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${Qe(n,Yv)}
    </section>
    ${Oe("run")}`}function Yv(t){let{pieces:e,mould:n,due:o,made_on:i,changed:s}=t,l=[e===void 0?"":K(e,"piece"),n??"",o?`due ${U(o)}`:"",i?`made ${U(i)}`:s?`changed ${U(s)}`:""].filter(Boolean);return hn({kind:Mo,one:t,facts:l,picture:WF(n),open:()=>On(t.file)})}var WF=t=>a.files?.moulds.find(e=>e.name===t)?.file??a.catalogue.find(e=>e.name===t)?.path;var li=({material:t,lot:e})=>`${t}:${e}`,Xv=(t,e)=>t.material===e.material&&t.lot.toLowerCase()===e.lot.toLowerCase(),tk=(t,{lots:e})=>e.filter(n=>Xv(n,t));function Im(t){return t[0]?.left.pieces!==void 0?{pieces:t.reduce((n,{left:o})=>n+(o.pieces??0),0)}:{g:Number(t.reduce((n,{left:o})=>n+(o.g??0),0).toFixed(6))}}function ek(t,{kind:e,of:n}){if(e==="counted"){let i=t?.materials.flatMap(l=>l.lots)??[],s=i.find(l=>li(l).toLowerCase()===n.toLowerCase());return s?Im(i.filter(l=>Xv(l,s))):{g:0}}return{pieces:t?.pieces.find(({batch:i})=>i===n)?.there??0}}var ss=({kind:t,of:e},n)=>`shelf-${`${t}-${e}-${n}`.replaceAll(/[^\w]+/g,"-")}`,Em=({complaint:t},e)=>t&&t.field===e&&!t.asks?C(t):void 0;function Dt(t,{name:e,label:n,kind:o,number:i,count:s,hint:l}){let d=ss(t,e),c=Em(t,e),p=c??l;return r`<div class="field ${c?"wants":""}">
    <label for=${d}>${n}</label>
    <input
      id=${d}
      type=${o??"text"}
      inputmode=${s?"numeric":i?"decimal":u}
      autocomplete="off"
      spellcheck="false"
      .value=${A(t.typed[e]??"")}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${p?`${d}-said`:u}
      @input=${m=>He(t,{typed:{[e]:m.target.value}})}
    />
    ${p?r`<p id="${d}-said" class=${c?"complaint":"hint"}>${p}</p>`:u}
  </div>`}var Vt=({typed:t},e)=>t[e]?.trim()||void 0;function $u(t,e,n,o){let i=(t.typed[e]??"").trim().toLowerCase(),s=i.split(/\s+/),l=o.filter(c=>s.every(p=>c.toLowerCase().includes(p)));return o.some(c=>c.toLowerCase()===i)||!l.length?u:r`<div class="choice" role="group" aria-label=${n}>
      ${l.slice(0,Wm).map(c=>r`<button type="button" @click=${()=>He(t,{typed:{[e]:c}})}>${c}</button>`)}
    </div>
    ${l.length>Wm?r`<p class="hint">${l.length-Wm} more: type a part of the name.</p>`:u}`}var Wm=8;var rs=({kind:t,of:e})=>`shelf-form-${`${t}-${e}`.replaceAll(/[^\w]+/g,"-")}`;function as(t){let{form:e,title:n,act_words:o,fields:i}=t,s=rs(e),l=()=>{zd(e),I(EF(e))};return r`<form
    class="shelf-act"
    aria-labelledby=${s}
    @submit=${d=>{d.preventDefault(),ik(t)}}
  >
    <p class="part-title" id=${s} tabindex="-1">${n}</p>
    ${i} ${NF(t)}
    <div class="row acts-of-form">
      <button type="submit" class="strong" ?disabled=${e.is_asking}>
        ${e.is_asking?"Recording ...":o}
      </button>
      <button type="button" @click=${l}>Leave it</button>
    </div>
  </form>`}var EF=({kind:t,of:e})=>B(`shelf-open-${`${t}-${e}`.replaceAll(/[^\w]+/g,"-")}`),nk=(t,e)=>`shelf-open-${`${t}-${e}`.replaceAll(/[^\w]+/g,"-")}`,ok="shelf-told";async function ik({form:t,act:e,names:n}){let o=e();if(o&&await Ma(t,o))return I(B(ok));let i=Pn(t)?.complaint;i&&I(B(n.includes(i.field)&&!i.asks?ss(t,i.field):`${rs(t)}-said`))}function NF(t){let{form:e,names:n}=t,{complaint:o}=e;if(!o||n.includes(o.field)&&!o.asks)return u;let i=o.choices?.find(({confirmed:l})=>l!==void 0)?.confirmed,s=l=>()=>{l(),ik(t)};return r`<div role="alert">
    <p class="alarm" id="${rs(e)}-said" tabindex="-1">${At(C(o))}</p>
    ${i===void 0?u:r`<button type="button" class="answer" @click=${s(()=>Wg(e,i))}>It is so</button>`}
    ${o.asks==="seen"?r`<button type="button" class="answer" @click=${s(()=>Eg(e,ek(a.stock.list,e)))}>
            Record it even so
          </button>`:u}
  </div>`}function ls(t){let{told:e}=a.stock;return e?.of!==t?u:r`<div class="told" id=${ok} tabindex="-1">
    <div>${e.sentences.map(n=>r`<p>${At(n)}</p>`)}</div>
  </div>`}var jF={metric:["g","kg"],us:["oz","lb"],both:["g","kg","oz","lb"]},HF={metric:["ml","l"],us:["fl oz"],both:["ml","l","fl oz"]};function Nm(t){let e=[...jF[a.units],...HF[a.units]];return t==="pieces"?["pieces"]:t==="mass"?e:[...e,"pieces"]}var sk=(t,e,n)=>t.typed[`${e}-unit`]??(n==="pieces"?"pieces":void 0);function bu(t,e,n,o){let i=Nm(o),s=rk(t.typed[e])?void 0:sk(t,e,o);return r`<div class="amount-asked">
    ${Dt(t,{name:e,label:n,number:!0})}
    <div class="choice" role="group" aria-label="Unit: ${n}">
      ${i.map(l=>r`<button
            type="button"
            aria-pressed=${l===s?"true":"false"}
            @click=${()=>He(t,{typed:{[`${e}-unit`]:l}})}
          >
            ${l}
          </button>`)}
    </div>
  </div>`}var rk=(t="")=>t.trim()!==""&&!kt(t);function wu(t,e,n){let o=(t.typed[e]??"").trim();if(!o)return void Ko(t,e,"How much is it?");if(rk(o))return o;let i=sk(t,e,n);return i?`${o} ${i}`:void Ko(t,e,"In which unit?")}var yu=()=>a.stock.list?.names,uk=(t,e)=>r`${Dt(t,{name:"on",label:e,kind:"date"})}
  ${Dt(t,{name:"best-before",label:"Best before, if it says so",kind:"date"})}`;function dk(t){let e=yu()?.currency;return as({form:t,title:"A lot that came",act_words:"Record it as bought",names:["bought","pack","packs","price","seller","lot","on","best-before"],fields:r`${Dt(t,{name:"bought",label:"Material"})}
      ${$u(t,"bought","Materials",yu()?.materials??[])}
      ${bu(t,"pack","One pack holds","either")}
      <div class="row">
        ${Dt(t,{name:"packs",label:"Packs",count:!0,hint:"left blank: one"})}
        ${Dt(t,{name:"price",label:`Price of one pack${e?`, ${e}`:""}`,number:!0,hint:e?"left blank: unpriced":'with its currency, as "27.50 EUR"; left blank: unpriced'})}
      </div>
      ${Dt(t,{name:"seller",label:"Seller"})} ${$u(t,"seller","Sellers",yu()?.sellers??[])}
      ${Dt(t,{name:"lot",label:"Lot number",hint:"as on the pack; left blank: one of your own"})}
      <div class="row">${uk(t,"Bought on")}</div>`,act:()=>{let n=wu(t,"pack","either");return n?{bought:Vt(t,"bought")??"",pack:n,price:Vt(t,"price"),...ck(t)}:void 0}})}var ck=t=>({packs:Vt(t,"packs"),seller:Vt(t,"seller"),lot:Vt(t,"lot"),on:Vt(t,"on"),"best-before":Vt(t,"best-before")});function pk(t){return as({form:t,title:"A lot that you made of others: lye solution, a blend",act_words:"Record it as made",names:["made","pack","of","lot","on","best-before"],fields:r`${Dt(t,{name:"made",label:"What it is"})}
      ${$u(t,"made","Made ahead",yu()?.made_ahead??[])}
      ${bu(t,"pack","It makes","either")} ${qF(t)}
      ${Dt(t,{name:"lot",label:"Lot number",hint:"left blank: one of your own"})}
      <div class="row">${uk(t,"Made on")}</div>`,act:()=>{let e=wu(t,"pack","either"),n=e?JF(t):void 0;return n?{made:Vt(t,"made")??"",pack:e,of:n,...ck(t)}:void 0}})}var ak=()=>a.stock.list?.materials.flatMap(({lots:t})=>t)??[];function qF(t){let e=(i,s)=>He(t,{sources:t.sources.map((l,d)=>d===i?{...l,...s}:l)}),n=()=>He(t,{sources:[...t.sources,{lot:"",amount:"",unit:""}]}),o=Em(t,"of");return r`<div class="made-of" role="group" aria-label="What is in it">
    ${t.sources.map((i,s)=>UF(t,i,s,l=>e(s,l)))}
    <button type="button" @click=${n}>
      ${t.sources.length?"And of another lot":"What of which lot is in it"}
    </button>
    <p class=${o?"complaint":"hint"} id=${ss(t,"of")} tabindex="-1">
      ${o??"Each lot loses what you took of it. Named none, it is of lots that are unknown."}
    </p>
  </div>`}function UF(t,e,n,o){let i=ss(t,`of-${n}`),s=ak().find(c=>li(c)===e.lot),l=Nm(mk(s)),d=()=>He(t,{sources:t.sources.filter((c,p)=>p!==n)});return r`<div class="row">
    <div class="field">
      <label for="${i}-lot">Lot</label>
      <select id="${i}-lot" .value=${A(e.lot)} @change=${c=>o({lot:lk(c)})}>
        <option value="" ?selected=${!e.lot}>Choose</option>
        ${ak().map(c=>r`<option value=${li(c)} ?selected=${li(c)===e.lot}>
              ${zF(c)}, lot ${c.lot}: ${Te(a.units,c.left)}
            </option>`)}
      </select>
    </div>
    <div class="field">
      <label for="${i}-amount">So much of it</label>
      <input
        id="${i}-amount"
        inputmode="decimal"
        autocomplete="off"
        .value=${A(e.amount)}
        @input=${c=>o({amount:lk(c)})}
      />
    </div>
    <div class="choice" role="group" aria-label="Unit of what is taken, ${n+1}">
      ${l.map(c=>r`<button type="button" aria-pressed=${c===e.unit?"true":"false"} @click=${()=>o({unit:c})}>
            ${c}
          </button>`)}
    </div>
    <button type="button" aria-label="Leave out lot ${n+1}" @click=${d}>Leave out</button>
  </div>`}var lk=t=>t.target.value,mk=t=>t===void 0?"either":t.left.pieces===void 0?"mass":"pieces";function zF({material:t,make:e}){let n=a.stock.list?.materials.find(o=>o.material===t);return e??n?.shown_as??t}function JF(t){let e=[];for(let{lot:n,amount:o,unit:i}of t.sources){if(!n)return void Ko(t,"of","Which lot is it?");if(!o.trim())return void Ko(t,"of","How much of it is taken?");if(kt(o)&&!i)return void Ko(t,"of","In which unit is it?");e.push(`${n}=${kt(o)?`${o.trim()} ${i}`:o.trim()}`)}return e}function fk(t,e){let n=mk(e[0]);return as({form:t,title:`How much is there of lot ${e[0].lot}?`,act_words:"Record the count",names:["counted","why","on"],fields:r`${e.length>1?r`<p class="hint">${e.length} deliveries have this lot number: count them together.</p>`:u}
    ${bu(t,"counted","There now",n)}
    ${Dt(t,{name:"why",label:"Why, if it is not what was left",hint:"spilt, thrown away"})}
    ${Dt(t,{name:"on",label:"Counted on",kind:"date"})}`,act:()=>{let o=wu(t,"counted",n);return o?{counted:[`${t.of}=${o}`],why:Vt(t,"why"),on:Vt(t,"on")}:void 0}})}function hk(){let{materials:t=[]}=a.stock.list??{};return r`<section class="shelf-part" aria-labelledby="materials-title">
    <h2 id="materials-title">Materials</h2>
    <div class="row">${Ir("bought","","Bought",!0)} ${Ir("made","","Made of others")}</div>
    ${Wr("bought","",dk)} ${Wr("made","",pk)} ${KF()}
    ${t.length?r`<p class="aside">What is best before an earlier day stands first, and is taken first.</p>
            ${t.map(VF)}`:r`<p class="aside">No lot has anything left.</p>`}
  </section>`}function Ir(t,e,n,o=!1,i,s=""){let l=()=>{Ud({kind:t,of:e,seen:i}),I(B(rs({kind:t,of:e}))),requestAnimationFrame(()=>document.getElementById(rs({kind:t,of:e}))?.scrollIntoView({block:"nearest"}))};return r`<button
    type="button"
    id=${nk(t,e)}
    class=${o?"strong":""}
    aria-expanded=${Pn({kind:t,of:e})?"true":"false"}
    aria-label=${s?`${n}: ${s}`:u}
    @click=${l}
  >
    ${n}
  </button>`}function Wr(t,e,n){let o=Pn({kind:t,of:e});return o?n(o):u}function KF(){let t=a.stock.list?.not_counted??[];if(!t.length)return u;let e=()=>{Ud({kind:"take-have",of:""});let o=Pn({kind:"take-have",of:""});o&&Ma(o,{"take-have":!0,on:o.typed.on})},n=Pn({kind:"take-have",of:""})?.complaint?.line;return r`<div class="part">
    <p>The studio's file lists what is no lot yet: ${t.join(", ")}. Lots alone are counted.</p>
    <button type="button" @click=${e}>Take it over as lots, once</button>
    ${n?r`<p class="alarm" role="alert">${n}</p>`:u}
  </div>`}var VF=t=>r`<section class="material" aria-label=${t.shown_as}>
    <h3>${t.shown_as}</h3>
    <ul class="lots">
      ${t.lots.map(e=>QF(e,t))}
    </ul>
  </section>`;function QF(t,e){let n=li(t),o=tk(t,e),i=o[0]===t;return r`<li class="lot ${t.is_past?"past":""}" data-lot=${n}>
    <div class="lot-told">
      <p class="lot-left">
        <b class="code">${t.lot}</b>${t.make?r` <span>${t.make}</span>`:u} ${GF(t)}
      </p>
      <p class="lot-facts">${jm(t).map(s=>r`<span>${s}</span> `)}</p>
      ${t.is_past?Hm(t):u}
    </div>
    <div class="lot-acts">
      ${i?Ir("counted",n,"Counted",!1,Im(o),`lot ${t.lot}`):u}
      <button type="button" aria-label="Where it went: lot ${t.lot}" @click=${()=>xe(t.lot)}>
        Where it went
      </button>
    </div>
    ${i?ls(n):u}
    ${i?Wr("counted",n,s=>fk(s,o)):u}
  </li>`}function GF({left:t,packs:e,pack:n}){let o=(t.g??t.pieces??0)<0,i=t.pieces===void 0?{g:-(t.g??0)}:{pieces:-t.pieces};return o?r`<span class="below"
        >${Te(a.units,i)} more was taken than was recorded: count what is there</span
      >`:r`<b>${Te(a.units,t)}</b>
        <span class="aside">left of ${e===1?"":`${e} \xD7 `}${n}</span>`}function jm({best_before:t,is_past:e,origin:n,on:o,seller:i,paid:s,currency:l}){let d={bought:"bought",made:"made","before records":"there before records began,"}[n];return[t&&!e?`best before ${U(t)}`:"",`${d} ${U(o)}${i?` from ${i}`:""}`,s!==null?`${s} ${l} in all`:n==="bought"?"unpriced":""].filter(Boolean)}var Hm=({best_before:t,lot:e})=>r`<p class="past-words">
    Best before ${U(t)}, which is past. Is ${e} still good? No batch takes it unless you choose it.
  </p>`;async function vu(t,e){if(Ed(t,e),a.run.file===t)return a.record.run===t&&zo(e),f({view:"record"});try{await On(t,"record")}catch(n){if(!(n instanceof y))throw n;F(n.message),f({stock:{...a.stock,told:{of:"",sentences:[n.message]}}})}}function _k(){let{pieces:t=[]}=a.stock.list??{};return r`<section class="shelf-part" aria-labelledby="pieces-title">
    <h2 id="pieces-title">Pieces</h2>
    ${t.length?r`<ul class="lots">
            ${t.map(YF)}
          </ul>`:r`<p class="aside">
            No pieces are there. Those of a batch stand here once its record says how many were made.
          </p>`}
  </section>`}var gk=[["sold","Sold"],["given","Given away"],["spoilt","Spoilt"],["counted-pieces","Counted"]];function YF(t){let{batch:e,run:n,made:o,there:i}=t;return r`<li class="lot pieces-of" data-batch=${e}>
    <div class="lot-told">
      <p class="lot-left">
        <b class="code">${e}</b> <span>${n}</span> ${o===null?u:r`<b>${i} there</b>`}
      </p>
      <p class="lot-facts">
        <span>${o===null?"How many were made is not noted yet":qm(t)}</span> ${ZF(t)}
      </p>
    </div>
    <div class="lot-acts">
      ${o===null?u:gk.map(([s,l])=>Ir(s,e,l,!1,{pieces:i},`pieces of ${e}`))}
      <button type="button" aria-label="Its record: ${e}" @click=${()=>vu(t.file,t.id)}>
        Its record
      </button>
      <button type="button" aria-label="What is in it: ${e}" @click=${()=>xe(e)}>
        What is in it
      </button>
    </div>
    ${ls(e)} ${gk.map(([s])=>Wr(s,e,l=>tB(l,t)))}
  </li>`}function qm({made:t,rejected:e,sold:n,given:o,spoilt:i,counted:s=0}){let l=[[e,"rejected"],[n,"sold"],[o,"given away"],[i,"spoilt"],[Math.max(s,0),"more by count"],[Math.max(-s,0),"fewer by count"]];return[`${t??0} made`,...l.filter(([d])=>d).map(([d,c])=>`${d} ${c}`)].join(", ")}function ZF({cures_until:t,for_sale:e,why_not:n,made:o}){let i=t?`cures until ${U(t)} by its formulas`:"";return e?r`<span>${i?`\u25D4 noted as ready, and ${i}`:"\u2713 for sale"}</span>`:o===null||!n?i?r`<span>◔ ${i}</span>`:u:r`${i?r`<span>◔ ${i}</span> `:u}<span
      >✗ not for sale: ${At(n)}</span
    >`}var XF={sold:["Sold","Record them as sold","Sold on"],given:["Given away","Record them as given away","Given on"],spoilt:["Spoilt","Record them as spoilt","Found on"],"counted-pieces":["Counted","Record the count","Counted on"]};function tB(t,{batch:e,there:n=0}){let{kind:o}=t,[i,s,l]=XF[o],d=o==="sold"||o==="given";return as({form:t,title:`${i}, of ${e}: ${n} there`,act_words:s,names:[o,"for","order","why","on"],fields:r`${Dt(t,{name:o,label:o==="counted-pieces"?"Pieces there":"Pieces",count:!0})}
    ${d?eB(t):Dt(t,{name:"why",label:"Why"})}
    ${Dt(t,{name:"on",label:l,kind:"date"})}`,act:()=>({[o]:[`${e}=${Vt(t,o)??""}`],on:Vt(t,"on"),why:Vt(t,"why"),order:t.typed.order||void 0,for:t.typed.order?void 0:Vt(t,"for")})})}function eB(t){let e=a.files?.orders.filter(({shipped:i})=>!i)??[],{order:n}=t.typed,o=i=>He(t,{typed:{order:i===n?"":i}});return r`${e.length?r`<p class="question" id="for-order-${t.kind}">For an order</p>
          <div class="choice words" role="group" aria-labelledby="for-order-${t.kind}">
            ${e.map(({file:i,name:s,pieces:l,due:d})=>r`<button
                  type="button"
                  aria-pressed=${i===n?"true":"false"}
                  @click=${()=>o(i)}
                >
                  ${s||i}
                  <small
                    >${[l===void 0?"":K(l,"piece"),d?`due ${U(d)}`:""].filter(Boolean).join(", ")}</small
                  >
                </button>`)}
          </div>`:u}
  ${n?u:Dt(t,{name:"for",label:e.length?"Or for whom":"For whom",hint:"may be left blank"})}`}function $k(){let{list:t,failed:e}=a.stock;return r`<h1 tabindex="-1">Shelf</h1>
    <div class="shelf-view">
      ${e!==void 0?r`<p class="alarm" role="alert"><strong>What stands there could not be read:</strong> ${e}.</p>`:u}
      ${t?r`${nB()} ${oB()} ${iB()} ${hk()} ${_k()}`:r`<p class="hint">${e===void 0?"Reading ...":""}</p>`}
    </div>`}function nB(){let{list:t,told:e}=a.stock;return!e||!t?u:t.pieces.some(({batch:o})=>o===e.of)||t.materials.some(({lots:o})=>o.some(i=>`${i.material}:${i.lot}`===e.of))?u:ls(e.of)}function oB(){let t=a.finding?.key==="trail"?a.finding.text:"";return r`<form class="row find-trail" @submit=${n=>{n.preventDefault(),t.trim()&&(f({finding:void 0}),xe(t.trim()))}}>
    <div class="field">
      <label for="find-trail">Which pieces hold a lot, and what is in a batch: its number</label>
      <input
        id="find-trail"
        autocomplete="off"
        spellcheck="false"
        .value=${A(t)}
        @input=${n=>f({finding:{key:"trail",text:n.target.value}})}
      />
    </div>
    <button type="submit" ?disabled=${!t.trim()}>Follow it</button>
  </form>`}function iB(){let{has_records:t,notes:e=[]}=a.stock.list??{},n=e.filter(({severity:o})=>o==="danger");return r`${t?u:r`<p class="aside">Nothing is recorded in this folder yet.</p>`}
  ${n.map(({text:o})=>r`<p class="alarm">${At(o)}</p>`)}`}function wk(){let{trail:t}=a.stock,{trail:e,complaint:n,of:o=""}=t??{};return r`<h1 tabindex="-1">${e?sB(e):o}</h1>
    <div class="trail">
      <div class="row">
        <button type="button" @click=${()=>f({view:"shelf"})}>Back to the shelf</button>
        ${e?r`<button type="button" @click=${()=>window.print()}>Print</button>`:u}
      </div>
      ${n?r`<p class="alarm" role="alert">${n}</p>`:u}
      ${e?rB(e):n?u:r`<p class="hint">Reading ...</p>`}
    </div>`}function sB({asked:t,is:e,batches:n}){return e==="lot"?`Where lot ${t} went`:e==="batch"?`What is in ${t}`:`What ${n.flatMap(({went:i})=>i).find(i=>i.for)?.for??t} got`}function rB(t){let{is:e,lots:n,batches:o,gaps:i}=t,s=r`<section class="shelf-part" aria-labelledby="trail-lots">
    <h2 id="trail-lots">${e==="lot"?"The lot":"Lots in it"}</h2>
    ${n.length?r`<ul class="lots">
            ${n.map(aB)}
          </ul>`:r`<p class="aside">No lot of it is known.</p>`}
  </section>`,l=r`<section class="shelf-part" aria-labelledby="trail-batches">
    <h2 id="trail-batches">${e==="lot"?"Batches that hold it":e==="batch"?"The batch":"Batches"}</h2>
    ${o.length?r`<ul class="lots">
            ${o.map(d=>uB(d,t))}
          </ul>`:r`<p class="aside">No batch has taken of it.</p>`}
  </section>`;return r`${e==="lot"?r`${s} ${l}`:r`${l} ${s}`} ${mB(i)}`}var us=(t,e)=>r`<button type="button" class="to-trail" @click=${()=>xe(t)}>${e}</button>`;function aB(t){let{shown_as:e}=t;return r`<li class="lot" data-lot=${t.lot}>
    <div class="lot-told">
      <p class="lot-left">
        ${us(t.lot,t.lot)} <span>${t.make??e}</span> <b>${Te(a.units,t.left)}</b>
        <span class="aside">left of ${t.packs===1?"":`${t.packs} \xD7 `}${t.pack}</span>
      </p>
      <p class="lot-facts">${jm(t).map(n=>r`<span>${n}</span> `)}</p>
      ${t.is_past?Hm(t):u} ${bk("Made of",t.from_lots)} ${bk("Went into",t.into_lots)}
      ${t.counts.map(({on:n,by:o,why:i})=>r`<p class="lot-facts">Counted ${U(n)}: ${lB(o)}${i?` (${i})`:""}</p>`)}
    </div>
  </li>`}function lB({g:t,pieces:e}){let n=t??e??0;return n?`${Te(a.units,e===void 0?{g:Math.abs(n)}:{pieces:Math.abs(n)})} ${n<0?"less":"more"} than was recorded`:"as it was"}var bk=(t,e)=>e.length?r`<p class="trail-line">
        ${t}
        ${e.map(n=>r`${us(n.lot,n.lot)} <span>${n.material}, ${Te(a.units,n.amount)}</span> `)}
      </p>`:u;function uB(t,{is:e,asked:n}){let{batch:o,run:i,begun_on:s,rows:l,pieces:d,went:c,cost:p}=t;return r`<li class="lot pieces-of" data-batch=${o}>
    <div class="lot-told">
      <p class="lot-left">
        ${e==="batch"&&o===n?r`<b class="code">${o}</b>`:us(o,o)} <span>${i}</span>
        ${d.made===null?u:r`<b>${d.there} there</b>`}
      </p>
      <p class="lot-facts">
        <span>begun ${U(s)}</span>
        <span>${d.made===null?"how many were made is not noted":qm(d)}</span>
        ${p?r`<span>${dB(p)}</span>`:u}
      </p>
      ${c.length?r`<ul class="trail-went">
              ${c.map(cB)}
            </ul>`:u}
      <ul class="trail-rows">
        ${l.map(pB)}
      </ul>
    </div>
    <div class="lot-acts">
      <button type="button" aria-label="Its record: ${o}" @click=${()=>{vu(t.file,t.id)}}>
        Its record
      </button>
    </div>
  </li>`}function dB({materials:t,unpriced:e}){let n=t.map(({amount:i,currency:s})=>`${i} ${s}`).join(" and "),o=e.length?`unpriced: ${e.join(", ")}`:"";return[n?`its materials cost ${n}`:"",o].filter(Boolean).join("; ")}function cB({what:t,pieces:e,on:n,order:o,for:i,why:s}){let l={sold:"sold",given:"given away",spoilt:"spoilt",counted:""}[t],d=Math.abs(e),c=t==="counted"?`${d} ${e<0?"fewer":"more"} by count`:`${d} ${l}`,p=o??i;return r`<li>
    ${c} ${p?r`to ${us(p,i??p)}`:u} on ${U(n)}${s?` (${s})`:""}
  </li>`}function pB({shown_as:t,weighed:e,from:n,unknown:o}){let i=(o.g??o.pieces??0)>0;return r`<li>
    <span>${t}, ${Te(a.units,e)}</span>
    ${n.map(s=>r`<span class="trail-from"
          >${us(s.lot,s.lot)} ${n.length>1||i?Te(a.units,s.amount):u}
          ${s.make??u}</span
        > `)}
    ${i?r`<span class="trail-unknown"
            >${n.length?`${Te(a.units,o)} of`:"of"} a lot that nobody noted</span
          >`:u}
  </li>`}function mB(t){return t.length?r`<section class="shelf-part" aria-labelledby="trail-gaps">
    <h2 id="trail-gaps">Batches that may hold it too</h2>
    <p>They weighed the same material, and nobody noted of which lot.</p>
    <ul class="trail-went">
      ${t.map(({batch:e,run:n,shown_as:o})=>r`<li>${us(e,e)} ${n}: ${o}</li>`)}
    </ul>
  </section>`:u}function yk(){let t=no();return r`${Pe("Tips")}
    <section aria-labelledby="own-tips">
      <h2 id="own-tips">Your own tips</h2>
      ${il(Un,"Each file is named by the studio, or by the runs that use its tips.",e=>Ds(Un,e))}
      ${t?a$(t):u}
      ${sl({label:"A new tip of your own",add:t?`Add it to ${t.file}`:"Begin a file with it",act:e=>t?Promise.resolve(d$(e)):_a(Un,Sc(e)),tried:dt})}
    </section>
    <section aria-labelledby="built-in-tips">
      <h2 id="built-in-tips">Built-in tips</h2>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Tip</th>
            <th scope="col">Opening</th>
            <th scope="col">Area, mm²</th>
          </tr>
        </thead>
        <tbody>
          ${Ws().map(({name:e,opening:n,area_mm2:o})=>r`<tr>
                <th scope="row">${e}</th>
                <td>${n??""}</td>
                <td>${o===void 0?"":R(o,1)}</td>
              </tr>`)}
        </tbody>
      </table>
    </section>
    ${Oe("tips")}`}var xk=document.getElementById("page");function Tk(){let{view:t,fault:e}=a;return r` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${_w()} ${v_()}
    <main
      id="main"
      tabindex="-1"
      data-view=${t}
      class=${a.is_old&&!ae(t)&&t!=="order"&&t!=="trail"?"old-now":""}
    >
      ${e?r`${t==="reading"?r`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${e}</p>`:u}
      ${hB()}
    </main>
    <p class="unseen" role="status">${a.announcement}</p>`}var fB={runs:Zv,orders:dw,formulas:Pb,moulds:Ob,fats:b$,tips:yk,shelf:$k};function hB(){let{view:t,fault:e}=a;return wn(t)?Vv(t):ae(t)?fB[t]():t==="formula"?Sb():t==="order"?uw():t==="trail"?wk():e?u:r`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}jf(()=>{gb(),we(Tk(),xk),$B()});we(Tk(),xk);document.addEventListener("keydown",t=>{if(!(t.ctrlKey||t.metaKey)||t.key.toLowerCase()!=="z"||ae(a.view)&&!a.mould)return;t.preventDefault();let{undo:e,redo:n}=Yl();(t.shiftKey?n:e)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return Zg();We()});function gB(){if(!a.run.file)return Um();f({fault:void 0}),We(),ct()}function Um(){f({fault:void 0}),xb().catch(t=>{f({fault:_B(t)}),t instanceof y&&t.may_pass&&window.setTimeout(Um,2e3)})}function _B(t){return t instanceof y&&[401,403].includes(t.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":t instanceof Error?t.message:String(t)}var vk=new ResizeObserver(([{target:t}])=>Rk(t.offsetHeight)),kk=null;function $B(){let t=document.querySelector(".foremost");t!==kk&&(vk.disconnect(),t?vk.observe(t):Rk(0),kk=t)}var Rk=t=>document.documentElement.style.setProperty("--foremost",`${t}px`);qf();b_();kb();Jm(t=>{qi(),t&&gB()});Um();
