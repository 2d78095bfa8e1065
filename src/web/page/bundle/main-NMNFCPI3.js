import{A as Hf,B as qf,C as sn,D as Uf,E as zf,F as Kf,G as re,H as ye,I as Jf,J as Vf,K as ct,L as Sn,M as wr,N as Tt,O as Kd,P as Qf,Q as Gf,S as Yf,T as Zf,U as Xf,a as Rf,b as Sf,c as B,d as w,e as Af,f as Rn,g as xt,h as Xs,i as ze,j as $i,k as Df,l as Pf,m as Of,n as Ff,o as Mf,p as Lo,q as Lf,r as Bf,s as ea,t as Cf,u as Wf,v as If,w as Ef,x as Nf,y as rn,z as jf}from"./chunk-WMCRQAL5.js";var ta=globalThis,oa=ta.ShadowRoot&&(ta.ShadyCSS===void 0||ta.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,th=Symbol(),eh=new WeakMap,na=class{constructor(t,n,o){if(this._$cssResult$=!0,o!==th)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=t,this.t=n}get styleSheet(){let t=this.o,n=this.t;if(oa&&t===void 0){let o=n!==void 0&&n.length===1;o&&(t=eh.get(n)),t===void 0&&((this.o=t=new CSSStyleSheet).replaceSync(this.cssText),o&&eh.set(n,t))}return t}toString(){return this.cssText}},nh=e=>new na(typeof e=="string"?e:e+"",void 0,th);var oh=(e,t)=>{if(oa)e.adoptedStyleSheets=t.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of t){let o=document.createElement("style"),i=ta.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,e.appendChild(o)}},Jd=oa?e=>e:e=>e instanceof CSSStyleSheet?(t=>{let n="";for(let o of t.cssRules)n+=o.cssText;return nh(n)})(e):e;var{is:Ex,defineProperty:Nx,getOwnPropertyDescriptor:jx,getOwnPropertyNames:Hx,getOwnPropertySymbols:qx,getPrototypeOf:Ux}=Object,ia=globalThis,ih=ia.trustedTypes,zx=ih?ih.emptyScript:"",Kx=ia.reactiveElementPolyfillSupport,yr=(e,t)=>e,Vd={toAttribute(e,t){switch(t){case Boolean:e=e?zx:null;break;case Object:case Array:e=e==null?e:JSON.stringify(e)}return e},fromAttribute(e,t){let n=e;switch(t){case Boolean:n=e!==null;break;case Number:n=e===null?null:Number(e);break;case Object:case Array:try{n=JSON.parse(e)}catch{n=null}}return n}},sh=(e,t)=>!Ex(e,t),rh={attribute:!0,type:String,converter:Vd,reflect:!1,useDefault:!1,hasChanged:sh};Symbol.metadata??=Symbol("metadata"),ia.litPropertyMetadata??=new WeakMap;var An=class extends HTMLElement{static addInitializer(t){this._$Ei(),(this.l??=[]).push(t)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(t,n=rh){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(t)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(t,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(t,o,n);i!==void 0&&Nx(this.prototype,t,i)}}static getPropertyDescriptor(t,n,o){let{get:i,set:r}=jx(this.prototype,t)??{get(){return this[n]},set(l){this[n]=l}};return{get:i,set(l){let u=i?.call(this);r?.call(this,l),this.requestUpdate(t,u,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(t){return this.elementProperties.get(t)??rh}static _$Ei(){if(this.hasOwnProperty(yr("elementProperties")))return;let t=Ux(this);t.finalize(),t.l!==void 0&&(this.l=[...t.l]),this.elementProperties=new Map(t.elementProperties)}static finalize(){if(this.hasOwnProperty(yr("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(yr("properties"))){let n=this.properties,o=[...Hx(n),...qx(n)];for(let i of o)this.createProperty(i,n[i])}let t=this[Symbol.metadata];if(t!==null){let n=litPropertyMetadata.get(t);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(t){let n=[];if(Array.isArray(t)){let o=new Set(t.flat(1/0).reverse());for(let i of o)n.unshift(Jd(i))}else t!==void 0&&n.push(Jd(t));return n}static _$Eu(t,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof t=="string"?t.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(t=>this.enableUpdating=t),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(t=>t(this))}addController(t){(this._$EO??=new Set).add(t),this.renderRoot!==void 0&&this.isConnected&&t.hostConnected?.()}removeController(t){this._$EO?.delete(t)}_$E_(){let t=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(t.set(o,this[o]),delete this[o]);t.size>0&&(this._$Ep=t)}createRenderRoot(){let t=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return oh(t,this.constructor.elementStyles),t}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(t=>t.hostConnected?.())}enableUpdating(t){}disconnectedCallback(){this._$EO?.forEach(t=>t.hostDisconnected?.())}attributeChangedCallback(t,n,o){this._$AK(t,o)}_$ET(t,n){let o=this.constructor.elementProperties.get(t),i=this.constructor._$Eu(t,o);if(i!==void 0&&o.reflect===!0){let r=(o.converter?.toAttribute!==void 0?o.converter:Vd).toAttribute(n,o.type);this._$Em=t,r==null?this.removeAttribute(i):this.setAttribute(i,r),this._$Em=null}}_$AK(t,n){let o=this.constructor,i=o._$Eh.get(t);if(i!==void 0&&this._$Em!==i){let r=o.getPropertyOptions(i),l=typeof r.converter=="function"?{fromAttribute:r.converter}:r.converter?.fromAttribute!==void 0?r.converter:Vd;this._$Em=i;let u=l.fromAttribute(n,r.type);this[i]=u??this._$Ej?.get(i)??u,this._$Em=null}}requestUpdate(t,n,o,i=!1,r){if(t!==void 0){let l=this.constructor;if(i===!1&&(r=this[t]),o??=l.getPropertyOptions(t),!((o.hasChanged??sh)(r,n)||o.useDefault&&o.reflect&&r===this._$Ej?.get(t)&&!this.hasAttribute(l._$Eu(t,o))))return;this.C(t,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(t,n,{useDefault:o,reflect:i,wrapped:r},l){o&&!(this._$Ej??=new Map).has(t)&&(this._$Ej.set(t,l??n??this[t]),r!==!0||l!==void 0)||(this._$AL.has(t)||(this.hasUpdated||o||(n=void 0),this._$AL.set(t,n)),i===!0&&this._$Em!==t&&(this._$Eq??=new Set).add(t))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let t=this.scheduleUpdate();return t!=null&&await t,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,r]of this._$Ep)this[i]=r;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,r]of o){let{wrapped:l}=r,u=this[i];l!==!0||this._$AL.has(i)||u===void 0||this.C(i,void 0,r,u)}}let t=!1,n=this._$AL;try{t=this.shouldUpdate(n),t?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw t=!1,this._$EM(),o}t&&this._$AE(n)}willUpdate(t){}_$AE(t){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(t)),this.updated(t)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(t){return!0}update(t){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(t){}firstUpdated(t){}};An.elementStyles=[],An.shadowRootOptions={mode:"open"},An[yr("elementProperties")]=new Map,An[yr("finalized")]=new Map,Kx?.({ReactiveElement:An}),(ia.reactiveElementVersions??=[]).push("2.1.2");var Gd=globalThis,ah=e=>e,ra=Gd.trustedTypes,lh=ra?ra.createPolicy("lit-html",{createHTML:e=>e}):void 0,Yd="$lit$",Dn=`lit$${Math.random().toFixed(9).slice(2)}$`,Zd="?"+Dn,Jx=`<${Zd}>`,Wo=document,kr=()=>Wo.createComment(""),xr=e=>e===null||typeof e!="object"&&typeof e!="function",Xd=Array.isArray,fh=e=>Xd(e)||typeof e?.[Symbol.iterator]=="function",Qd=`[ 	
\f\r]`,vr=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,dh=/-->/g,uh=/>/g,Bo=RegExp(`>|${Qd}(?:([^\\s"'>=/]+)(${Qd}*=${Qd}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),ch=/'/g,ph=/"/g,hh=/^(?:script|style|textarea|title)$/i,eu=e=>(t,...n)=>({_$litType$:e,strings:t,values:n}),s=eu(1),R=eu(2),UC=eu(3),Ke=Symbol.for("lit-noChange"),d=Symbol.for("lit-nothing"),mh=new WeakMap,Co=Wo.createTreeWalker(Wo,129);function gh(e,t){if(!Xd(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return lh!==void 0?lh.createHTML(t):t}var _h=(e,t)=>{let n=e.length-1,o=[],i,r=t===2?"<svg>":t===3?"<math>":"",l=vr;for(let u=0;u<n;u++){let c=e[u],p,m,_=-1,b=0;for(;b<c.length&&(l.lastIndex=b,m=l.exec(c),m!==null);)b=l.lastIndex,l===vr?m[1]==="!--"?l=dh:m[1]!==void 0?l=uh:m[2]!==void 0?(hh.test(m[2])&&(i=RegExp("</"+m[2],"g")),l=Bo):m[3]!==void 0&&(l=Bo):l===Bo?m[0]===">"?(l=i??vr,_=-1):m[1]===void 0?_=-2:(_=l.lastIndex-m[2].length,p=m[1],l=m[3]===void 0?Bo:m[3]==='"'?ph:ch):l===ph||l===ch?l=Bo:l===dh||l===uh?l=vr:(l=Bo,i=void 0);let y=l===Bo&&e[u+1].startsWith("/>")?" ":"";r+=l===vr?c+Jx:_>=0?(o.push(p),c.slice(0,_)+Yd+c.slice(_)+Dn+y):c+Dn+(_===-2?u:y)}return[gh(e,r+(e[n]||"<?>")+(t===2?"</svg>":t===3?"</math>":"")),o]},Tr=class e{constructor({strings:t,_$litType$:n},o){let i;this.parts=[];let r=0,l=0,u=t.length-1,c=this.parts,[p,m]=_h(t,n);if(this.el=e.createElement(p,o),Co.currentNode=this.el.content,n===2||n===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(i=Co.nextNode())!==null&&c.length<u;){if(i.nodeType===1){if(i.hasAttributes())for(let _ of i.getAttributeNames())if(_.endsWith(Yd)){let b=m[l++],y=i.getAttribute(_).split(Dn),T=/([.?@])?(.*)/.exec(b);c.push({type:1,index:r,name:T[2],strings:y,ctor:T[1]==="."?aa:T[1]==="?"?la:T[1]==="@"?da:Eo}),i.removeAttribute(_)}else _.startsWith(Dn)&&(c.push({type:6,index:r}),i.removeAttribute(_));if(hh.test(i.tagName)){let _=i.textContent.split(Dn),b=_.length-1;if(b>0){i.textContent=ra?ra.emptyScript:"";for(let y=0;y<b;y++)i.append(_[y],kr()),Co.nextNode(),c.push({type:2,index:++r});i.append(_[b],kr())}}}else if(i.nodeType===8)if(i.data===Zd)c.push({type:2,index:r});else{let _=-1;for(;(_=i.data.indexOf(Dn,_+1))!==-1;)c.push({type:7,index:r}),_+=Dn.length-1}r++}}static createElement(t,n){let o=Wo.createElement("template");return o.innerHTML=t,o}};function Io(e,t,n=e,o){if(t===Ke)return t;let i=o!==void 0?n._$Co?.[o]:n._$Cl,r=xr(t)?void 0:t._$litDirective$;return i?.constructor!==r&&(i?._$AO?.(!1),r===void 0?i=void 0:(i=new r(e),i._$AT(e,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(t=Io(e,i._$AS(e,t.values),i,o)),t}var sa=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:o}=this._$AD,i=(t?.creationScope??Wo).importNode(n,!0);Co.currentNode=i;let r=Co.nextNode(),l=0,u=0,c=o[0];for(;c!==void 0;){if(l===c.index){let p;c.type===2?p=new bi(r,r.nextSibling,this,t):c.type===1?p=new c.ctor(r,c.name,c.strings,this,t):c.type===6&&(p=new ua(r,this,t)),this._$AV.push(p),c=o[++u]}l!==c?.index&&(r=Co.nextNode(),l++)}return Co.currentNode=Wo,i}p(t){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(t,o,n),n+=o.strings.length-2):o._$AI(t[n])),n++}},bi=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,o,i){this.type=2,this._$AH=d,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=Io(this,t,n),xr(t)?t===d||t==null||t===""?(this._$AH!==d&&this._$AR(),this._$AH=d):t!==this._$AH&&t!==Ke&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==void 0?this.T(t):fh(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this._$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==d&&xr(this._$AH)?this._$AA.nextSibling.data=t:this.T(Wo.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:o}=t,i=typeof o=="number"?this._$AC(t):(o.el===void 0&&(o.el=Tr.createElement(gh(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let r=new sa(i,this),l=r.u(this.options);r.p(n),this.T(l),this._$AH=r}}_$AC(t){let n=mh.get(t.strings);return n===void 0&&mh.set(t.strings,n=new Tr(t)),n}k(t){Xd(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let r of t)i===n.length?n.push(o=new e(this.O(kr()),this.O(kr()),this,this.options)):o=n[i],o._$AI(r),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){let o=ah(t).nextSibling;ah(t).remove(),t=o}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},Eo=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,o,i,r){this.type=1,this._$AH=d,this._$AN=void 0,this.element=t,this.name=n,this._$AM=i,this.options=r,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=d}_$AI(t,n=this,o,i){let r=this.strings,l=!1;if(r===void 0)t=Io(this,t,n,0),l=!xr(t)||t!==this._$AH&&t!==Ke,l&&(this._$AH=t);else{let u=t,c,p;for(t=r[0],c=0;c<r.length-1;c++)p=Io(this,u[o+c],n,c),p===Ke&&(p=this._$AH[c]),l||=!xr(p)||p!==this._$AH[c],p===d?t=d:t!==d&&(t+=(p??"")+r[c+1]),this._$AH[c]=p}l&&!i&&this.j(t)}j(t){t===d?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,t??"")}},aa=class extends Eo{constructor(){super(...arguments),this.type=3}j(t){this.element[this.name]=t===d?void 0:t}},la=class extends Eo{constructor(){super(...arguments),this.type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==d)}},da=class extends Eo{constructor(t,n,o,i,r){super(t,n,o,i,r),this.type=5}_$AI(t,n=this){if((t=Io(this,t,n,0)??d)===Ke)return;let o=this._$AH,i=t===d&&o!==d||t.capture!==o.capture||t.once!==o.once||t.passive!==o.passive,r=t!==d&&(o===d||i);i&&this.element.removeEventListener(this.name,this,o),r&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},ua=class{constructor(t,n,o){this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(t){Io(this,t)}},$h={M:Yd,P:Dn,A:Zd,C:1,L:_h,R:sa,D:fh,V:Io,I:bi,H:Eo,N:la,U:da,B:aa,F:ua},Vx=Gd.litHtmlPolyfillSupport;Vx?.(Tr,bi),(Gd.litHtmlVersions??=[]).push("3.3.3");var Rt=(e,t,n)=>{let o=n?.renderBefore??t,i=o._$litPart$;if(i===void 0){let r=n?.renderBefore??null;o._$litPart$=i=new bi(t.insertBefore(kr(),r),r,void 0,n??{})}return i._$AI(e),i};var tu=globalThis,wi=class extends An{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let t=super.createRenderRoot();return this.renderOptions.renderBefore??=t.firstChild,t}update(t){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(t),this._$Do=Rt(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Ke}};wi._$litElement$=!0,wi.finalized=!0,tu.litElementHydrateSupport?.({LitElement:wi});var Qx=tu.litElementPolyfillSupport;Qx?.({LitElement:wi});(tu.litElementVersions??=[]).push("4.2.2");var wh=()=>{},nu=!1,ca=!1,iu=!1;function yh(e){wh=e}function Q(){nu||(nu=!0,queueMicrotask(()=>{nu=!1,ca?iu=!0:vh()}))}function vh(){iu=!1,wh()}var Gx=1500,ou=0;function bh(){clearTimeout(ou),ca=!1,iu&&vh()}function kh(){let e=({target:t})=>{!(t instanceof Element)||t.closest("[role=slider], select, canvas")||(ca=!0,clearTimeout(ou),ou=window.setTimeout(bh,Gx))};addEventListener("pointerdown",e,!0);for(let t of["pointerup","pointercancel"])addEventListener(t,()=>setTimeout(bh),!0);addEventListener("click",()=>ca=!1,!0)}function xh(e){return e.split("/").slice(1).map(t=>t.replaceAll("~1","/").replaceAll("~0","~"))}var j=e=>e.replaceAll("~","~0").replaceAll("/","~1");function $(e,t){let n=e;for(let o of xh(t)){if(n===null||typeof n!="object")return;n=n[o]}return n}function M(e,t,n){return ru(e,xh(t),n)}function ru(e,t,n){let[o,...i]=t;if(o===void 0)return n;if(Array.isArray(e)){let u=[...e],c=ru(u[Number(o)],i,n);return c===void 0?u.splice(Number(o),1):u[Number(o)]=c,u}let r={...e??{}},l=ru(r[o],i,n);return l===void 0?delete r[o]:r[o]=l,r}var Th=e=>Rn("GET",`/api/bench?run=${encodeURIComponent(e)}`),Rh=e=>xt("/api/bench/tick",e),Sh=e=>xt("/api/bench/weigh_cup",e),Ah=(e,t)=>xt("/api/bench/anew",{run:e,batch:t}),Dh=(e,t)=>xt("/api/bench/finish",{run:e,batch:t});var de=(e,t)=>({name:e,label:t,unit:"mm"}),Gn=de("height","Floor to brim"),pa={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},su={block:{words:"Box, loaf or slab",measures:[de("length","Longer side at the brim"),de("width","Shorter side"),Gn,pa,{...de("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[de("floor_diameter","Across the floor"),de("brim_diameter","Across the brim"),Gn]},fluted_cup:{words:"Fluted cup",measures:[de("floor_diameter","Across the floor"),de("brim_diameter","Across the brim"),Gn,{name:"flutes",label:"Flutes",unit:"",count:!0},de("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},de("across_flats","Across the flats"),Gn,pa]},dome:{words:"Bowl",measures:[de("diameter","Across the brim"),Gn]},half_ball:{words:"Half ball",measures:[de("diameter","Across the brim")]},ball:{words:"Ball",measures:[de("diameter","Across")]},half_ring:{words:"Half ring",measures:[de("centre_diameter","Ring, middle to middle of the tube"),de("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[de("outer_floor_diameter","Cup, across the floor"),de("outer_brim_diameter","Cup, across the brim"),de("post_floor_diameter","Post, at its foot"),de("post_brim_diameter","Post, at its top"),Gn]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[de("height","Height"),de("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[Gn,pa],points:{columns:[de("x","From the left"),de("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[de("side","Straight edge, tip to round"),Gn,pa]}},Ph=Object.fromEntries(Object.entries(su).map(([e,{words:t}])=>[e,t])),yi=e=>su[e]?.measures??[],Yn=e=>su[e]?.points;var au=(e,t)=>String($(e,t)??"").trim(),Rr=e=>au(e,"/shape/kind"),Et=(e,t)=>$(e,`/${t}`)!==void 0,lu=e=>["body","skin"].includes(au(e,"/mesh/role"));function pt(e,t){let n=$(e,t);return Array.isArray(n)?n:[]}function Oh(e,t){return(Yn(Rr(e))?.columns??[]).map(({name:o})=>String($(t,`/${o}`)??"").trim())}function Sr(e){return pt(e,"/shape/points").flatMap((t,n)=>Oh(e,t).every(Boolean)?[n]:[])}function ma(e){let t=n=>n.some(Boolean)&&!n.every(Boolean);return pt(e,"/shape/points").flatMap((n,o)=>t(Oh(e,n))?[o]:[])}var du=e=>pt(e,"/water/weighings").flatMap((t,n)=>String(t).trim()?[n]:[]);function Fh(e){let t=e,n=(o,i)=>{if(!Array.isArray($(t,o)))return;let r=i.map(l=>$(e,`${o}/${l}`));t=M(t,o,r)};return Yn(Rr(e))&&n("/shape/points",Sr(e)),n("/water/weighings",du(e)),t}function fa(e,t){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(t)??[];if(!n)return t;let r=n==="/shape/points"?Sr(e):du(e);return`${n}/${r[Number(o)]??o}${i}`}function Ar(e){let t=[],n=i=>au(e,i)!=="",o=(i,r)=>{i||t.push(r)};if(Et(e,"shape")){let i=Rr(e);o(i!=="","the shape");for(let{name:l,label:u,optional:c}of yi(i))o(c||n(`/shape/${l}`),u.toLowerCase());let r=Yn(i);r&&o(Sr(e).length>=r.least,`${r.least} points at least`)}if(Et(e,"water")){o(n("/water/temperature"),"the water's temperature"),o($(e,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o($(e,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(du(e).length>0,"a weighing of water")}return!lu(e)&&!Et(e,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),t}var ot=e=>e.slice(0,e.lastIndexOf("/")+1),mt=e=>e.slice(e.lastIndexOf("/")+1),Pn=(e,t)=>{let n=ot(e);return n?Yx(n+t):t};function Yx(e){let t=[];for(let n of e.split("/"))n===".."?t.pop():n!=="."&&t.push(n);return t.join("/")}function Nt(e,t){return(e.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+t}function vi(e,t){let[,n,o]=/^(.*?)((?:\.(?:run|order|formula|fats|tips))?\.\w+)$/.exec(e)??["",e,""];for(let i=1;;++i){let r=i===1?e:`${n}_${i}${o}`;if(!t.some(l=>l.file===r))return r}}var Zx=["mould","formula","run","file","own_fats","own_tips"];function uu(e,t=""){return e===null||typeof e!="object"?[]:Object.entries(e).flatMap(([n,o])=>{let i=`${t}/${n}`;return typeof o!="string"?uu(o,i):Zx.includes(n)?[i]:[]})}function cu(e,t){let[n,o]=[e,t];for(let i of["/$schema","/id",...uu(e)])[n,o]=[M(n,i,void 0),M(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function pu(e,t){let n=["/id",...uu(e)].filter(o=>$(e,o)!==$(t,o));return o=>n.reduce((i,r)=>$(i,r)===$(e,r)?M(i,r,$(t,r)):i,o)}var No={name:"run",list:"runs",called:"name",has_id:!0,new_name:({shipped:e,file:t,now:n})=>e?mt(t):Nt(String(n.name),".run.json"),written:e=>e,is_begun:()=>!0},jo={name:"order",list:"orders",called:"for",has_id:!0,new_name:({now:e})=>Nt(String(e.for??"order"),".order.json"),written:e=>e,is_begun:()=>!0},Ho={name:"formula",list:"formulas",called:"name",has_id:!1,new_name:({shipped:e,file:t,now:n})=>e?mt(t):Nt(String(n.name),".formula.json"),written:e=>e,is_begun:()=>!0},mu=(e,t,n)=>({name:e,list:t,called:n,has_id:!1,new_name:({file:o})=>mt(o),written:o=>o,is_begun:()=>!0}),Dr=mu("studio","studios","name"),an=mu("fats","fats"),Zn=mu("tips","tips","title"),it={name:"mould",list:"moulds",called:"name",has_id:!1,new_name:({now:e})=>Nt(String(e.name),".json"),written:e=>({...Fh(e),name:String(e.name??"").trim()}),is_begun:e=>Et(e,"shape")||Et(e,"mesh")};var Mh={},Lh={kind:No,id:"",file:"",version:null,shipped:!1,now:Mh,saved:Mh,unanswered:[]},Se={view:"reading",came_from:"set-up",removed:[],formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:Lh,formulas:{},beside:{},past:[],future:[],quote_wish:{figure:""},is_old:!1,changed_beside:[],dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},record:{run:"",batches:[],acts:[]},stock:{forms:[]},learned:{},ways:{},new_formula:{name:"",copied:""},new_order:"",printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set(tT()),folded:new Set,units:Xx(),announcement:""},a=Se;function Xx(){let e=localStorage.getItem("units");return e==="metric"||e==="us"?e:"both"}var fu=e=>`numbers ${String(e.now.id??e.file)}`,eT=e=>({numbers:localStorage.getItem(fu(e))??void 0,figure:""});function Pr(e){f({quote_wish:{...Se.quote_wish,...e}});let{numbers:t}=Se.quote_wish;t?.trim()?localStorage.setItem(fu(Se.run),t):localStorage.removeItem(fu(Se.run))}var Bh="set-up ";function tT(){try{let e=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(e)?e.filter(t=>typeof t=="string"):[]}catch{return[]}}function nT(){let e=[...Se.open].filter(t=>t.startsWith(Bh));localStorage.setItem("parts",JSON.stringify(e))}function f(e){Object.assign(Se,e),Q()}var D=e=>f({announcement:e});function v(e,t){Object.assign(e,t),Q()}function On(e,t){let{[e]:n,...o}=Se.formulas;f({formulas:t?{...o,[e]:t}:o})}function je(e,t){let n=new Set(Se[e]);n.delete(t)||n.add(t),f({[e]:n}),t.startsWith(Bh)&&nT()}function ki(e=Lh){f({run:e,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:[],taken_in:void 0,fault:void 0,plan:void 0,quote_wish:eT(e),quoted:void 0,run_days:void 0,complaint:void 0,finding:void 0,typed:void 0,measured:void 0})}function ue(e){Se.open.has(e)||f({open:new Set(Se.open).add(e)})}function qo({list:e,called:t},n,o={}){if(!Se.files)return;let i=Se.files[e].findIndex(u=>u.file===n),r={...i<0?{}:Se.files[e][i],file:n,name:String((t&&o[t])??""),note:String(o.note??""),shipped:!1},l=Se.files[e].filter(u=>u.file!==n);l.splice(i<0?l.length:i,0,r),f({files:{...Se.files,[e]:l}})}function Ch({list:e},t,n){if(!Se.files)return;let o=Se.files[e].map(l=>l.file===t?{...l,file:n}:l),i=Se.list_open,r=i?.file===t?Object.assign(i,{file:n}):i;f({files:{...Se.files,[e]:o},list_open:r})}var oT=1e4,hu=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",hu);var ha=[],xi=()=>`bench ${a.files?.folder??""}`;function ft(){try{return[...JSON.parse(localStorage.getItem(xi())??"[]"),...ha]}catch{return ha}}function gu(e){try{e.length?localStorage.setItem(xi(),JSON.stringify(e)):localStorage.removeItem(xi()),ha=[]}catch{ha=e}}var iT=(e,t)=>e.run===t.run&&e.batch===t.batch&&e.key===t.key;function Wh(e){let t={...e,id:crypto.randomUUID(),tab:hu,at:Date.now()};gu([...ft().filter(n=>!iT(n,t)),t])}var ga=e=>gu(ft().filter(t=>!e(t))),Ih=(e,t)=>gu(ft().map(n=>n.run===e?{...n,run:t}:n)),_u=()=>ft().find(e=>e.tab===hu||Date.now()-e.at>oT);var he=["pour","pipe","apart"],Ae=["studio","own_fats","own_tips"],_a=e=>Ae.includes(e);var $u=e=>[...new Set(e.flatMap(t=>a.formulas[t]??[]))],bu=()=>Ae.flatMap(e=>a.beside[e]??[]),Eh=e=>e.filter(t=>t.theirs),Fn=e=>Eh([...$u(e==="apart"?["apart"]:["pour","pipe"]),...bu()])[0],$a=()=>[a.run,...$u(he),...bu()].filter(e=>e.is_taken&&!e.theirs),ba=()=>Eh([a.run,...$u(he),...bu()]);var Or=()=>a.formulas.apart?"apart":"run",Nh=e=>f({dangers:{...a.dangers,[Or()]:e}});function wu(e){let t=e.cautions.filter(n=>n.severity==="danger");Nh(t.map(({text:n,topic:o,batter:i,batch_pieces:r})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:r})))}function jh(e){e.lye_heavy&&Nh([{text:B(e),is_of_heat:!1}])}var Hh={};function jt(e,t){(Hh[e]??=[]).push(t)}function ve(e,t){for(let n of Hh[e]??[])n(t)}var Fr=new Map,Ht=e=>{Fr.set(e,void 0)},Xn=(e,t)=>{Fr.set(e,t)};function qh(e,t){if(!Fr.has(e))return!1;let n=Fr.get(e);return n===void 0&&Fr.set(e,t),n===void 0||n===t}async function St({kind:e,name:t,text:n,from:o,goes_on:i,about_to:r,is_own:l}){for(;;){let{runs:u=[],orders:c=[],formulas:p=[],moulds:m=[],studios:_=[],fats:b=[],tips:y=[]}=a.files??{},T=vi(t,[...u,...c,...p,...m,..._,...b,...y]);r?.(T);let V=await rT({file:T,version:null,text:n,from:o,goes_on:i});if(qo(e,T,ye(V.there.text)??{}),V.is_new||l?.(V.there))return V.there}}async function rT(e){try{Ht(e.file);let t=await $i(e);return Xn(t.file,t.version),{is_new:!0,there:t}}catch(t){if(!(t instanceof w)||t.status!==409)throw t;return Xn(e.file,null),{is_new:!1,there:t.answer}}}var wa=e=>`unsaved ${e.name} ${a.files?.folder??""} `;function Uo({kind:e,id:t,file:n,version:o,shipped:i,now:r},l){if(e.is_begun(r))try{let u={id:t,file:n,version:o,shipped:i,text:re(r),copy:l};localStorage.setItem(wa(e)+t,JSON.stringify(u))}catch{}}function yu(e,t){try{return JSON.parse(localStorage.getItem(wa(e)+t)??"null")??void 0}catch{return}}var eo=(e,t)=>localStorage.removeItem(wa(e)+t),Uh=()=>Object.keys(localStorage).some(e=>e.startsWith("unsaved "));function ya(e){let t=wa(e);return Object.keys(localStorage).flatMap(o=>o.startsWith(t)?[o.slice(t.length)]:[]).sort().flatMap(o=>yu(e,o)??[])}var sT=300,G=e=>e.now!==e.saved;function zo(e,t,n=crypto.randomUUID()){return{kind:e,id:n,file:"",version:null,shipped:!1,now:t,saved:void 0,unanswered:[]}}async function We(e,t,n=t){let o=await Zf(t),i=aT(e,JSON.parse(o.text),o.shipped),r=yu(e,n),l=r?.copy&&o.shipped?await lT(e,r,i):void 0;if(l)return eo(e,n),We(e,l);let{version:u,shipped:c=!1}=o,p={kind:e,id:n,file:t,version:u,shipped:c,now:i,saved:i,unanswered:[]};return r&&dT(p,r,o),p}var aT=(e,t,n=!1)=>e.has_id&&!n&&t.id===void 0?{...t,id:crypto.randomUUID()}:t;async function lT(e,t,n){if(!a.files?.[e.list].some(r=>r.file===t.copy))return;let o=ye(t.text),i=ye((await ze(t.copy)).text);if(!(!o||!i||re(o)===re(n)))return cu(e.written(o),i)?t.copy:void 0}function dT(e,t,n){let o=ye(t.text);if(!o||re(o)===re(e.now))return eo(e.kind,e.id);v(e,{now:o}),!(t.version===n.version||n.shipped)&&(v(e,{version:t.version}),Xh(e,n))}function Ie(e,t){let n=e.now;v(e,{now:t,failed:void 0,...e.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),Uo(e),ve("edited",{file:e,before:n})}var zh=new WeakMap,vu=async e=>zh.get(e),ln=e=>Kh(e,()=>uT(e)),to=e=>Kh(e,()=>e.shipped?Jh(e,Vh):Promise.resolve());function Kh(e,t){let n=vu(e).then(t);return zh.set(e,n.catch(()=>{})),n}async function uT(e){!G(e)||e.theirs||await Jh(e,e.shipped||!e.file?Vh:Qh)}async function Jh(e,t){v(e,{failed:void 0});try{await t(e)}catch(n){throw n instanceof w&&v(e,{failed:B(n.complaint)}),n}}async function Vh(e){let{kind:t,id:n,now:o}=e,i=e.shipped?e.file:void 0,r=t.written(o),l=await St({kind:t,name:t.new_name(e),text:re(r),from:i,goes_on:i!==void 0&&t.name==="run",about_to:m=>Uo(e,m),is_own:({text:m})=>i!==void 0&&cu(r,ye(m)??{})}),u=JSON.parse(l.text),c=pu(r,u),p=e.now===o?u:c(e.now);eo(t,n),v(e,{id:l.file,file:l.file,version:l.version,shipped:!1,now:p,saved:u}),G(e)&&Uo(e),i!==void 0&&ve("copied",{file:e,from:i,renamed:c})}async function Qh(e){let{version:t,now:n}=e,o=re(e.kind.written(n));v(e,{unanswered:[...new Set(e.unanswered).add(o)]});try{Ht(e.file);let i=await $i({file:e.file,version:t,text:o});Xn(e.file,i.version),Mr(e,n,i.version)}catch(i){if(!(i instanceof w)||i.status!==409)throw i;Xn(e.file,t),Gh(e,i.answer),G(e)&&!e.theirs&&await Qh(e)}}function Mr(e,t,n){v(e,{saved:t,version:n,theirs:void 0,failed:void 0,unanswered:[]}),G(e)?Uo(e):eo(e.kind,e.id),qo(e.kind,e.file,t)}function Gh(e,{version:t,text:n}){if(n===re(e.kind.written(e.now)))return Mr(e,e.now,t);let o=n!==null&&e.unanswered.includes(n);if(v(e,{unanswered:[]}),o)return v(e,{version:t,saved:void 0,theirs:void 0});let i=G(e)||e.theirs?void 0:ye(n);i?cT(e,i,t):Xh(e,{version:t,text:n})}function cT(e,t,n){ve("giving_way",{file:e}),v(e,{set_aside:e.now,is_taken:!0,now:t}),Mr(e,t,n),D(`${e.file} was changed outside this page, and stands here as it is now.`),ve("gave_way",{file:e})}function Yh(e,{version:t,text:n}){let o=ye(n);!o||e.theirs||G(e)||(ve("giving_way",{file:e}),v(e,{now:o}),Mr(e,o,t),ve("gave_way",{file:e}))}var Zh=e=>v(e,{set_aside:void 0,is_taken:void 0});function Xh(e,{version:t,text:n}){v(e,{theirs:{version:t,text:n}}),Uo(e),D(n===null?`${e.file} was deleted outside this page. Save it again, or leave it deleted?`:`${e.file} was changed outside this page. Which version do you want to keep?`),ve("conflict",{file:e})}function eg(e){if(!e.theirs)return;let t=ye(e.theirs.text);if(!t){let n=`what is in ${e.file} now is no ${e.kind.name}; keep what is on this page`;return v(e,{failed:n})}ve("giving_way",{file:e}),v(e,{set_aside:e.now,now:t}),Mr(e,t,e.theirs.version),ve("gave_way",{file:e})}function tg(e){e.theirs&&(v(e,{version:e.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),Uo(e),ve("unwritten",{file:e}))}var Ko=({theirs:e})=>e?.text===null;function ng(e){Ko(e)&&(eo(e.kind,e.id),v(e,{saved:e.now,theirs:void 0,failed:void 0}),D(`${e.file} stays deleted.`),ve("left_deleted",{file:e}))}function og(e){if(!e.set_aside)return;let{set_aside:t,now:n}=e,o=e.is_taken;f({typed:void 0}),Ie(e,t),v(e,{set_aside:o?void 0:n})}var ig=e=>(e.theirs??e).version;function rg(e,t){v(e,{id:t,file:t}),ve("renamed",{file:e,renamed:n=>n})}async function sg(e){let{version:t,text:n}=await ze(e.file),o=ye(n);if(!o||e.theirs||t===e.version)return;let i=pu(e.now,o);if(G(e))return v(e,{version:t,now:i(e.now),saved:o});v(e,{version:t,now:o,saved:o}),ve("renamed",{file:e,renamed:i})}var ag=e=>e.shipped||!e.file?[]:[[e.file,ig(e)]];async function ku(e,t,n,o){let i=e.file,r=()=>ig(e)===t&&e.file===i;if(!r()||(await vu(e),!r()))return!1;o(),await xu();let l=await pT(i,n);return await vu(e),r()&&(Gh(e,l),G(e)&&!e.theirs&&ve("unwritten",{file:e})),!0}async function pT(e,t){let n=await t(e);return n===null?{version:n,text:null}:ze(e)}var xu=()=>new Promise(e=>setTimeout(e,sT));var mT=400,fT=2e3,Ru=new WeakMap;function dg(e,t){clearTimeout(Ru.get(e)),Ru.set(e,window.setTimeout(()=>{dn(e)},t))}var no=(e=a.run)=>dg(e,mT),hT=e=>e===a.run||e===a.order?.open;async function dn(e=a.run){clearTimeout(Ru.get(e));try{await ln(e),G(e)&&!e.theirs&&hT(e)&&no(e)}catch(t){if(!(t instanceof w))throw t;t.may_pass&&dg(e,fT)}}async function ht(){for(let e of[a.run,a.order?.open])e?.file&&G(e)&&await dn(e)}var lg=Promise.resolve(),Tu=0;function rt(){if(!Tu&&!gT().length)return;++Tu;let e=lg.then(_T).finally(()=>--Tu);return lg=e.catch(()=>{}),e}var gT=()=>[...he.map(e=>a.formulas[e]),...Ae.map(e=>a.beside[e])].filter(e=>e!==void 0&&G(e)&&!e.theirs);async function _T(){for(let e of he){let t=a.formulas[e];!t||!G(t)||t.theirs||(t.shipped&&e!=="apart"&&await to(a.run),await ln(t))}for(let e of Ae){let t=a.beside[e];t&&G(t)&&!t.theirs&&await ln(t)}}var qt=e=>Pn(a.run.file,e);function st(e,t){let n=qt(e);return t?.some(o=>o.file===n)?n:e}function ug(e){let t=a.run.now,n=t.pour,o=t.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},r=st(String(n?.mould??""),a.files?.moulds);return{file:vi("trial.run.json",a.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(t.name??""),sell:t.sell??"",...t.spoilage===void 0?{}:{spoilage:t.spoilage},pour:{mould:r,...i,formula:e,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:t.scales??{},...$T(t)}}}function $T(e){let t={};for(let n of["cut","pots","batch"])e[n]!==void 0&&(t[n]=e[n]);if(t.batch){let{whippings:n,...o}=t.batch;t.batch=o}return t}function Ee(e){return e.length<2?e.join(""):`${e.slice(0,-1).join(", ")} and ${e.at(-1)}`}var Ut=({lines:e})=>Array.isArray(e)?e:[];function Mn(e){let t=Ut(e);return t.length>0&&t.every(({run:n,pieces:o})=>n&&typeof o=="number")}function va(e){let t=Ut(e).flatMap(({together:n})=>n??[]);return[...new Set(t.filter((n,o)=>t.indexOf(n)!==o))]}var At=new Map,Lr=new Set,bT={changed:{},unreadable:[]},un=()=>new Set([...he.flatMap(e=>a.formulas[e]??[]),...Ae.flatMap(e=>a.beside[e]??[])]);function Ti(){let e=yT(),t=new Set([...un()].map(({file:o})=>o));for(let o of At.keys())!e.has(o)&&!t.has(o)&&At.delete(o);for(let o of Lr)e.has(o)||Lr.delete(o);let n=[...e].filter(o=>!At.has(o));return n.length?wT(n):void 0}async function wT(e){for(let[t,n]of await cg(e))At.has(t)||At.set(t,n)}async function cg(e){let t=e.filter(o=>!Lr.has(o)),n=t.length?await Lo(new Map(t.map(o=>[o,null]))):bT;return Pu(n.unreadable),new Map(e.map(o=>[o,n.changed[o]??null]))}var Au=async e=>(await cg([e])).get(e)??null,Du=()=>new Map([...At].filter(([e])=>!Lr.has(e)));function yT(){let e=new Set,t=o=>{typeof o!="string"||!o||(e.add(qt(o)),o.includes("..")||e.add(o))},n=a.run.now;e.add(qt("studio.json")),t($(n,"/pour/mould")),t($(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])t($(o,"/mould"));for(let o of["pour","pipe"])a.formulas[o]||t($(n,`/${o}/formula`));for(let{file:o,now:i}of un()){let r=i.own_fats;typeof r=="string"&&r&&e.add(ot(o)+r).add(r)}t($(a.beside.studio?.now,"/own_tips"));for(let o of vT())e.add(o);for(let o of Ae)e.delete(a.beside[o]?.file??"");return e}function vT(){let{open:e}=a.order??{},t=new Set(e?Ut(e.now).map(({run:p})=>Pn(e.file,p)):[]),{runs:n=[],formulas:o=[],moulds:i=[],fats:r=[],tips:l=[]}=a.files??{},u=[...n,...o,...i,...r,...l].filter(({shipped:p})=>!p),c=-1;for(;c!==t.size;){c=t.size;for(let{file:p,used_by:m=[]}of u)m.some(_=>t.has(_))&&t.add(p)}return e&&t.size&&t.add(Pn(e.file,"studio.json")),t.delete(a.run.file),t}function pg(e,{changed:t}){let n=Object.keys(t).filter(o=>At.has(o)&&At.get(o)===e.get(o));for(let o of n)At.set(o,t[o]);return n}var Pu=e=>e.forEach(t=>Lr.add(t));function mg(){return[...un()].flatMap(({file:e,version:t})=>{let n=At.get(e)??t;return At.delete(e),n===t?[]:[e]})}var fg=0,Jo=()=>fg;function Ou(e){++fg;for(let{file:t}of un())e.includes(t)&&Su.add(t);f({is_old:!0,changed_beside:hg(a.changed_beside,e)})}var Su=new Set,hg=(e,t)=>[...new Set([...e,...t])];function gg(){if(!a.changed_beside.length)return;let e=a.changed_beside.filter(t=>!Su.has(t)&&!qh(t,At.get(t)??null));Su.clear(),f({changed_beside:[]}),e.length&&(f({taken_in:{files:hg(a.taken_in?.files??[],e),since:Date.now()}}),D(Fu()))}function Fu(){let{files:e=[]}=a.taken_in??{};if(!e.length)return"";let[t,n,o]=e.length===1?["was","it","it is"]:["were","them","they are"];return`${Ee(e)} ${t} changed outside this page: the figures are of ${n} as ${o} now.`}var kT=5e3;function _g(){a.taken_in&&Date.now()-a.taken_in.since>kT&&f({taken_in:void 0})}var xT=1e3,TT=450,ka=!1,Vo=!1,Mu=0;function se(){f({is_old:!0}),ka?Vo=!0:Ri()}async function Ri(){if(ka){Vo=!0;return}ka=!0,$g(!1);try{do Vo=!1,await RT();while(Vo)}finally{ka=!1,$g(!0)}}async function wg(){let{run:e}=a,t={file:e.file,run:e.now},n=await Xf(t)?.catch(()=>{});!n||e!==a.run||a.plan||Uh()||(f({plan:n,planned:t}),wu(n))}var $g=e=>{document.documentElement.dataset.settled=String(e)};function bg(){let{run:e}=a,{apart:t}=a.formulas,{file:n,now:o}=e;return()=>{let i=e===a.run&&(n===e.file||o===e.now);return t===a.formulas.apart&&(t!==void 0||i)}}async function RT(){let e=bg();try{let t=rt();t&&await t;let n=Ti();n&&await n,e=bg();let{apart:o}=a.formulas;if(Fn(o?"apart":"run"))return f({is_old:!0});let i=Jo(),r=o?ug(o.file):{file:a.run.file,run:a.run.now},l=await ea(r);if(window.clearTimeout(Mu),!e())return void(Vo=!0);f({plan:l,planned:r,complaint:void 0}),wu(l);let u=i===Jo();f({is_old:Vo||!u}),u&&gg()}catch(t){if(!(t instanceof w))throw t;if(!e())return void(Vo=!0);ST(t)}}function ST(e){f({is_old:!0}),window.clearTimeout(Mu);let t=()=>{f({complaint:e.complaint}),jh(e.complaint)};a.complaint||!a.plan?t():Mu=window.setTimeout(t,TT),e.may_pass&&window.setTimeout(se,xT)}var yg=2e3,gt=e=>f({bench:{...a.bench,...e}}),AT=()=>gt({acts:ft()});addEventListener("storage",({key:e})=>{e===xi()&&AT()});function xa(){let{file:e}=a.run;!e||a.bench.run===e||(f({bench:{run:e,batches:[],complaints:[],acts:ft()}}),Ln().then(Cu))}function vg(e){let{file:t}=a.run;Ih(e,t),a.bench.run===e&&gt({run:t,acts:ft()}),a.bench.run===t&&Ln()}function kg(){let{run:e,version:t}=a.bench;return t===void 0||e!==a.run.file?void 0:{run:e,version:t}}var Br=0;async function Ln(){let{run:e}=a.bench,t=Br;try{let n=await Th(e);if(e!==a.bench.run)return;if(t!==Br)return await Ln();xg(n)}catch(n){if(!(n instanceof w))throw n;if(e!==a.bench.run)return;gt({failed:B(n.complaint)}),Tg(n)&&setTimeout(()=>a.bench.failed!==void 0&&void Ln(),yg)}}var xg=({batches:e,version:t,complaints:n=[]})=>gt({batches:e,version:t,complaints:n.map(({line:o})=>o),failed:void 0}),Tg=({may_pass:e,status:t})=>e||t>=500||[401,403].includes(t),oo=e=>a.bench.batches.find(t=>t.batch===e),Bu=e=>a.bench.acts.filter(({run:t,batch:n})=>t===a.bench.run&&n===e),io=e=>Bu(e).length>0;function ro(e,t){let n=Bu(e).find(i=>i.key===t),o=oo(e)?.ticks[t]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function Qo(e){let t=Bu(e).find(n=>n.reading!==void 0);return(t?t.reading:oo(e)?.weigh_cup)??""}function Rg(e,t,n){let{run:o}=a.bench,r=oo(e)!==void 0||!a.planned?void 0:re(a.planned.run);Wh({run:o,batch:e,seen:t,text:r,...n}),gt({acts:ft(),chosen:e,told:void 0}),Cu()}var Sg=(e,t,n,o)=>Rg(e,t,{key:n,done:o}),Ag=(e,t,n)=>Rg(e,t,{reading:n||null}),Lu=!1;async function Cu(){if(!Lu){Lu=!0;try{await navigator.locks.request(xi(),DT)}finally{Lu=!1}ft().length&&setTimeout(()=>{Cu()},yg)}}async function DT(){for(let e=_u();e;e=_u())if(!await PT(e))return}async function PT(e){let{id:t}=e;try{let n=await OT(e);return++Br,ga(o=>o.id===t),FT(n,e.run),!0}catch(n){if(!(n instanceof w))throw n;return Tg(n)?(gt({unsent:B(n.complaint)}),!1):(await MT(e,n),!0)}}function OT({run:e,text:t,batch:n,seen:o,key:i,done:r,reading:l}){let u={run:e,text:t,batch:n,seen:o};return i!==void 0?Rh({...u,key:i,done:r??!1}):Sh({...u,reading:l??null})}function FT(e,t){let n=ft();if(t!==a.bench.run)return gt({acts:n,unsent:void 0});let i=[...a.bench.batches.filter(r=>r.batch!==e.batch),e].sort((r,l)=>r.batch-l.batch);gt({acts:n,batches:i,unsent:void 0})}async function MT(e,{complaint:t}){++Br,ga(o=>o.run===e.run&&o.batch===e.batch);let n=`Not taken: ${B(t)}.`;gt({acts:ft(),unsent:void 0,told:{batch:e.batch,words:n}}),D(n),se(),await Ln()}async function Cr(e){let{run:t}=a.bench;await Dg(e,async()=>{let n=await Ah(t,e);return ga(o=>o.run===t&&o.batch===e),n})}var Wu=e=>Dg(e,()=>Dh(a.bench.run,e));async function Dg(e,t){let{run:n}=a.bench;try{let o=await t();if(++Br,n!==a.bench.run)return;xg(o),gt({acts:ft(),told:void 0,chosen:e})}catch(o){if(!(o instanceof w))throw o;gt({told:{batch:e,words:B(o.complaint)}})}}var Pg=e=>gt({chosen:e,told:void 0}),Og=()=>gt({told:void 0});var LT=300,BT=1200,Ta="",Fg=0;function Wr(){let e={run:{file:a.run,now:a.run.now}};for(let t of he){let n=a.formulas[t];n&&(e[t]={file:n,now:n.now})}for(let t of Ae){let n=a.beside[t];n&&(e[t]={file:n,now:n.now})}return e}function Go(e=""){let t=performance.now();e&&e===Ta&&t-Fg<=BT&&a.past.length||Iu(Wr()),f({future:[]}),Ta=e,Fg=t}var Iu=e=>f({past:[...a.past,e].slice(-LT)});function so(e){Iu(Mg(Wr(),e,()=>e.saved??{}))}function Mg(e,t,n){let o=Object.entries(e).map(([i,r])=>r.file===t?[i,{file:t,now:n(r.now)}]:[i,r]);return Object.fromEntries(o)}function Eu(e,t){let n=o=>o.map(i=>Mg(i,e,t));f({past:n(a.past),future:n(a.future)})}function Ir(){let e=a.past.at(-1);e&&(f({past:a.past.slice(0,-1),future:[...a.future,Wr()]}),Lg(e,"Undone"))}function Nu(){let e=a.future.at(-1);e&&(f({past:[...a.past,Wr()],future:a.future.slice(0,-1)}),Lg(e,"Redone"))}function Lg(e,t){Ta="",f({typed:void 0});for(let n of[...Ae,...he,"run"])CT(n,e);D(t)}function CT(e,t){let n=t[e];if(_a(e))return WT(e,n);let o=e==="run"?n?.file===a.run:a.formulas[e]!==void 0;!n||!o||(e!=="run"&&On(e,n.file),n.file.now!==n.now&&Ie(n.file,n.now))}function WT(e,t){t&&t.file===a.beside[e]&&t.file.now!==t.now&&Ie(t.file,t.now)}var Si=e=>e===a.run||he.some(t=>a.formulas[t]===e)||Ae.some(t=>a.beside[t]===e);jt("giving_way",({file:e})=>{Si(e)&&(Ta="",Iu(Wr()),f({typed:void 0}))});for(let e of["copied","renamed"])jt(e,({file:t,renamed:n})=>Eu(t,n));var IT=1200,ju="",Bg=0;function Ai(e,t=""){let n=performance.now(),o=t&&t===ju&&n-Bg<=IT&&e.past.length;v(e,{past:o?e.past:[...e.past,e.open.now],future:[]}),[ju,Bg]=[t,n]}function Ra(e){let t=e.past.at(-1);t&&(v(e,{past:e.past.slice(0,-1),future:[...e.future,e.open.now]}),Cg(e,t,"Undone"))}function Sa(e){let t=e.future.at(-1);t&&(v(e,{past:[...e.past,e.open.now],future:e.future.slice(0,-1)}),Cg(e,t,"Redone"))}function Cg({open:e},t,n){ju="",f({typed:void 0}),Ie(e,t),D(n)}function ao(e){return e==="run"?a.run:e==="order"?a.order?.open:_a(e)?a.beside[e]:a.formulas[e]}var ET=e=>ao(e)?.now,g=(e,t)=>$(ET(e),t),O=(e,t)=>String(g(e,t)??"");function te(e,t){let n=g(e,t);return Array.isArray(n)?n:[]}function ge(e,t,n){let o=g(e,t)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function Wg(e,t){e==="order"&&a.order?Ai(a.order,t):Go(t===void 0?"":`${e} ${t}`)}function Z(e,t,n){let o=ao(e);!o||$(o.now,t)===n||(Wg(e,t),Ie(o,M(o.now,t,n)))}function Ig(e,t){let n=ao(e);n&&(Wg(e),f({typed:void 0}),Ie(n,t(n.now)))}function zt(e){Go(),f({typed:void 0});for(let[t,n]of e){let o=ao(t);o&&Ie(o,n(o.now))}}var qu=(e,t)=>{let{[e]:n,...o}=a.beside;f({beside:t?{...o,[e]:t}:o})};function Aa(e){for(let t of Ae)a.beside[t]===e&&qu(t,void 0)}async function NT(e,t){try{return await We(e,t)}catch(n){if(!(n instanceof w||n instanceof SyntaxError))throw n;return}}async function lo(e,t,n,o=()=>!0){let i=()=>a.beside[e]?.file===n?a.beside[e]:void 0;if(i())return i();let r=await NT(t,n);return i()||!o()?i():(qu(e,r),r&&G(r)&&(so(r),ve("unwritten",{file:r})),r?.theirs&&ve("conflict",{file:r}),r)}var Hu=()=>qt("studio.json");async function Di(e=!1){let t=Hu(),n=(a.files?.studios??[]).some(o=>o.file===t);a.beside.studio?.file!==t&&(n||e?await lo("studio",Dr,t,()=>t===Hu()):qu("studio",void 0))}async function Da(){a.run.shipped&&await to(a.run);let e=Hu();await lo("studio",Dr,e)||(await jT(e),await lo("studio",Dr,e))}async function jT(e){try{Ht(e);let{version:t}=await $i({file:e,version:null,text:re({schema:"brimwright.studio/1"})});Xn(e,t)}catch(t){if(!(t instanceof w)||t.status!==409)throw t}qo(Dr,e)}var Eg=(e,t)=>ot(e.file)+t;async function HT(e){try{return ye((await ze(e)).text)!==void 0}catch(t){if(!(t instanceof w))throw t;return!1}}async function Pa(e){let t=a.formulas[e];if(!t)return;t.shipped&&await to(t);let n=String($(t.now,"/own_fats")??"");if(n){let l=Eg(t,n);return lo("own_fats",an,await HT(l)?l:n)}let o=(a.files?.fats??[]).find(l=>!l.shipped&&ot(l.file)===ot(t.file)),i={schema:"brimwright.fats/1",fats:[]},r=o?.file??await zu(an,Eg(t,"my.fats.json"),i);return Z(e,"/own_fats",mt(r)),lo("own_fats",an,r)}async function Uu(){a.run.shipped&&await to(a.run);let e="/pipe/beads/own_tips",n=String($(a.run.now,e)??"")||String($(a.beside.studio?.now,"/own_tips")??"");if(n)return lo("own_tips",Zn,qt(n));let o=ot(a.run.file),i=(a.files?.tips??[]).find(u=>!u.shipped&&ot(u.file)===o),r={schema:"brimwright.tips/2",tips:[]},l=i?.file??await zu(Zn,`${o}my.tips.json`,r);return a.beside.studio?Z("studio","/own_tips",mt(l)):Z("run",e,mt(l)),lo("own_tips",Zn,l)}async function Er(e,t){await lo(e===an?"own_fats":"own_tips",e,t)&&f({held_open:t})}function uo(){let{view:e,held_open:t,beside:n}=a,o=e==="fats"?n.own_fats:e==="tips"?n.own_tips:void 0;return o&&o.file===t?o:void 0}async function Oa(e,t){let n=e===an;await Er(e,await zu(e,n?"my.fats.json":"my.tips.json",n?{schema:"brimwright.fats/1",fats:[t]}:{schema:"brimwright.tips/2",tips:[t]}))}async function zu(e,t,n){let{file:o}=await St({kind:e,name:t,text:re(n)});return qo(e,o),o}function Ng(e,t){let n=(i,r)=>String($(i,r)??"").endsWith(mt(t));for(let i of he)e===a.beside.own_fats&&n(a.formulas[i]?.now,"/own_fats")&&Z(i,"/own_fats",e.file);let o="/pipe/beads/own_tips";e===a.beside.own_tips&&n(a.run.now,o)&&Z("run",o,e.file)}var Yo=[],Pi=[],Nr=()=>Yo.at(-1),Ju=()=>Pi.at(-1);function La(e){Yo=[...Yo,e],Pi=[],f({list_told:e.words}),D(e.words)}async function qg(){let e=Nr();e&&(await e.undo(),Yo=Yo.slice(0,-1),Pi=[...Pi,e],f({list_told:""}),D("Undone"),await Dt())}async function Ug(){let e=Ju();e&&(await e.redo(),Pi=Pi.slice(0,-1),Yo=[...Yo,e],f({list_told:e.words}),D("Redone"),await Dt())}async function Dt(){let[e,t]=await Promise.all([Xs(),Ff()]);f({files:e,removed:t})}async function zg(e,t){let{$schema:n,...o}=JSON.parse((await ze(t.file)).text),i=`${t.name||Zo(t.file)}, copy`,r={...o,...e.called&&{[e.called]:i},...e.has_id?{id:crypto.randomUUID()}:{}},l=e.called?e.new_name(zo(e,r)):Nt(i,Vu(t.file)),{file:u}=await St({kind:e,name:l,text:re(r),from:t.file});await Dt();let c="";return La({words:`Copied ${t.name||t.file}.`,undo:async()=>c=await Fa(u,!0),redo:()=>Ma(u,c)}),u}var Vu=e=>/(\.(run|order|formula|fats|tips))?\.json$/.exec(e)?.[0]??"",Zo=e=>mt(e).slice(0,-Vu(e).length||void 0),Kg=(e,t)=>ot(e)+t+Vu(e),jg=e=>[a.run,a.order?.open,...he.map(t=>a.formulas[t]),...Ae.map(t=>a.beside[t])].find(t=>t?.file===e);async function Jg(e,t,n){let o={name:t.name,note:t.note,stem:Zo(t.file)};await Ku(e,t.file,n),await Dt();let i=Kg(t.file,n.stem);La({words:`Changed ${n.name||i}.`,undo:()=>Ku(e,i,o),redo:()=>Ku(e,t.file,n)})}async function Ku(e,t,{name:n,note:o,stem:i}){let r=jg(t),l=r??await We(e,t),u={name:String((e.called&&l.now[e.called])??""),note:String(l.now.note??""),stem:Zo(t)},{note:c,...p}=l.now,m={...p,...o&&{note:o}},_=e.called?M(m,`/${e.called}`,n||void 0):m;if(re(_)!==re(l.now)&&(r&&Si(r)&&Go(),r===a.order?.open&&a.order&&Ai(a.order),Ie(l,_),await ln(l),l.theirs))throw new Error(`${t} was changed outside this page just now. Look at it again.`);let b=Kg(t,i);if(b===t)return Hg(t,u,{name:n,note:o,stem:i});[t,b].forEach(Ht);let{renamed_in:y}=await Df(t,b);Ch(e,t,b),Hg(b,u,{name:n,note:o,stem:i}),y.forEach(Ht),r&&rg(r,b);for(let T of y){let V=jg(T);V&&await sg(V)}}function Hg(e,t,n){let o=a.list_open;if(o?.file!==e)return;let i=r=>o[r]===t[r]?n[r]:o[r];v(o,{name:i("name"),note:i("note"),stem:i("stem")})}async function Fa(e,t){Ht(e);let{removed:n}=await Pf(e,t);a.run.file===e&&ki(),a.order?.open.file===e&&f({order:void 0});let o=Ae.map(i=>a.beside[i]).find(i=>i?.file===e);return o&&Aa(o),n}function Ma(e,t){return Ht(e),Of(t)}async function Vg(e,t){let n=await Fa(e.file,t);await Dt(),La({words:`Removed ${e.name||e.file}.`,undo:()=>Ma(e.file,n),redo:async()=>n=await Fa(e.file,!0)})}async function Qg({removed:e,file:t,name:n}){await Ma(t,e),await Dt();let o="";La({words:`${n||t} is back.`,undo:async()=>o=await Fa(t,!0),redo:()=>Ma(t,o)})}async function Gg({removed:e,file:t,name:n}){f({removed:await Mf(e),list_told:""}),D(`${n||t} is deleted for good.`)}var Yg=0;function De(){let e=++Yg;return()=>e===Yg}function Zg(e){let t=$(a.run.now,`/${e}/formula`);return typeof t=="string"&&t?st(t,a.files?.formulas):void 0}async function co(){await Promise.all(["pour","pipe"].map(qT))}async function qT(e){let t=Zg(e),n=()=>t!==void 0&&a.formulas[e]?.file===t;if(n()||(On(e,Xg(t)),t===void 0||n()))return;let o=await UT(t);if(!o||Zg(e)!==t||n())return;let i=Xg(t);On(e,i??o),!i&&(G(o)&&(so(o),ve("unwritten",{file:o})),o.theirs&&ve("conflict",{file:o}))}var Xg=e=>he.map(t=>a.formulas[t]).find(t=>t&&t.file===e),Qu=new Map;function UT(e){let t=Qu.get(e)??We(Ho,e).catch(zT);return Qu.set(e,t),t.finally(()=>Qu.delete(e))}function zT(e){if(!(e instanceof w||e instanceof SyntaxError))throw e}var jr=(e,t=0)=>e.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(t-i).toFixed(2)}`).join("L")}Z`).join("");function Oi(e){let t=new DataView(e).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(e,20,t))),o=r=>20+t+8+(n.bufferViews[n.accessors[r].bufferView].byteOffset??0),i=r=>n.accessors[r].count;return n.meshes.map(({name:r,primitives:[{attributes:l,indices:u,material:c}]})=>({name:r,positions:new Float32Array(e,o(l.POSITION),i(l.POSITION)*3),indices:new Uint32Array(e,o(u),i(u)),colour:n.materials[c].pbrMetallicRoughness.baseColorFactor}))}function t_(e,t,n="upright"){let[o,i,r]=n==="upright"?[1,2,1]:[2,1,-1],l=[],{positions:u,indices:c}=e;for(let p=0;p<c.length;p+=3){let m=[];for(let _=0;_<3;++_){let b=3*c[p+_],y=3*c[p+(_+1)%3],T=u[b+i]-t,V=u[y+i]-t;if(T>0==V>0)continue;let Ue=T/(T-V),Mo=[1e3*(u[b]+Ue*(u[y]-u[b])),1e3*r*(u[b+o]+Ue*(u[y+o]-u[b+o]))];T>0?m.push(Mo):m.unshift(Mo)}m.length===2&&l.push([m[0],m[1]])}return l}function n_(e){let t=([i,r])=>`${i.toFixed(3)} ${r.toFixed(3)}`,n=new Map;for(let i of e){let r=t(i[0]);n.set(r,[...n.get(r)??[],i])}let o=[];for(let i of e){let r=[],l=n.get(t(i[0]))?.shift();for(;l;)r.push(l[0]),l=n.get(t(l[1]))?.shift();r.length>2&&o.push(r)}return o}function Hr(e){let t=e.positions,[n,o,i,r,l,u]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<t.length;p+=3)i=Math.min(i,t[p]),r=Math.max(r,t[p]),l=Math.min(l,t[p+1]),u=Math.max(u,t[p+1]),n=Math.min(n,t[p+2]),o=Math.max(o,t[p+2]);let c=n+(o-n)*.50137;return{loops:n_(t_(e,c)),left:1e3*i,right:1e3*r,floor:1e3*l,brim:1e3*u,cut_y:-1e3*c}}function o_(e,t){let[n,o]=[t.floor/1e3,(t.brim-t.floor)/1e3];return[.999,.50137].map(r=>n_(t_(e,n+r*o,"level"))).reduce((r,l)=>e_(l)>1.001*e_(r)?l:r)}function e_(e){let[t,n]=[1/0,-1/0];for(let o of e)for(let[i]of o)[t,n]=[Math.min(t,i),Math.max(n,i)];return Math.max(0,n-t)}function Gu(e,t){let[n,o]=[1/0,-1/0];for(let i of e.loops)i.forEach(([r,l],u)=>{let[c,p]=i[(u+1)%i.length];if(!(Math.min(l,p)>t||Math.max(l,p)<t))for(let m of l===p?[r,c]:[r+(t-l)/(p-l)*(c-r)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[e.left,e.right]}var i_=40,KT=2e3,Yu=0;async function r_(e){let t=await sn({kind:"glb",gauge:e}),n=Oi(await t.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function Fi(e){let[t,n]=await Promise.all([rn(e),r_(e)]),o=Hr(n);return{gauge:t,outline:o,above:o_(n,o)}}async function JT(e){let{pockets:t}=await rn(e),n=t[0].brim_mm-t[0].floor_mm-.001,o=Array.from({length:i_},(i,r)=>`${(n*(r+1)/i_).toFixed(4)} mm`);return rn({...e,depth:o})}function Kt(){VT()}async function VT(){let e=$(a.run.now,"/pour/mould");if(typeof e!="string")return;let t=++Yu,n=st(e,a.files?.moulds);try{let[o,i]=await Promise.all([JT({file:n}),r_({file:n})]);t===Yu&&f({measured:{mould:n,gauge:o,outline:Hr(i)},measuring_failed:void 0})}catch(o){if(t!==Yu)return;if(!(o instanceof w))throw o;f({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(Kt,KT)}}var qr=({run:e,together:t},n="")=>Rn("GET",`/api/record?run=${encodeURIComponent(e)}&batch=${encodeURIComponent(n)}`+(t===void 0?"":`&together=${encodeURIComponent(t)}`)),Zu=e=>xt("/api/record/begin",e),Ba=e=>xt("/api/record/note",e);var QT=1e4,ec=2500,tc=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",tc);var Ca=[],Mi=()=>`notes ${a.files?.folder??""}`;function Bn(){try{return[...JSON.parse(localStorage.getItem(Mi())??"[]"),...Ca]}catch{return Ca}}function nc(e){try{e.length?localStorage.setItem(Mi(),JSON.stringify(e)):localStorage.removeItem(Mi()),Ca=[]}catch{Ca=e}}var Xu=(e,t)=>e.batch===t.batch&&e.key===t.key,cn=(e,t)=>a.record.acts.filter(n=>Xu(n,{batch:e,key:t})).at(-1);function s_(e){let t=Bn(),n=t.filter(i=>Xu(i,e)).at(-1),o={...e,seen:n?.seen??e.seen,id:crypto.randomUUID(),tab:tc,at:Date.now()};nc([...t.filter(i=>!Xu(i,e)||i.was_sent&&!i.refused),o])}var oc=e=>nc(Bn().map(e)),Wa=(e,t)=>oc(n=>n.id===e?{...n,...t}:n),Ur=e=>nc(Bn().filter(t=>!e(t))),GT=({is_typed:e,lacks:t,refused:n,at:o})=>!n&&!t&&(!e||Date.now()-o>=ec),ic=()=>Bn().find(e=>GT(e)&&(e.tab===tc||Date.now()-e.at>QT));var a_=2e3,Pe=e=>f({record:{...a.record,...e}}),Li=()=>Pe({acts:Bn()});addEventListener("storage",({key:e})=>{e===Mi()&&Li()});function mo(){a.run.file&&Kr({run:a.run.file})}function Kr({run:e,together:t}){Ia({run:e,together:t})||(f({record:{run:e,together:t,batches:[],acts:Bn(),chosen:YT({run:e,together:t})}}),po().then(zr))}var sc=({run:e,together:t})=>t===void 0?e:`${e}#${t}`,Ia=e=>sc(e)===sc(a.record);function l_(e){a.record.run===e&&(Pe({run:a.run.file}),po())}var d_=e=>`record ${sc(e)}`,YT=e=>sessionStorage.getItem(d_(e))??void 0,u_=()=>a.record.run===a.run.file?a.record.version:void 0,c_=()=>{let{run:e,together:t,version:n}=a.record;return t!==void 0&&n!==void 0&&a.view==="order"?{run:e,record:n}:void 0},ac=0;async function po(){let{run:e,together:t,chosen:n}=a.record,o={run:e,together:t},i=ac;try{let r=await qr(o,n);if(!Ia(o))return;if(i!==ac||n!==a.record.chosen)return await po();let{batches:l,run_batches:u}=r.record;Pe({batches:l,of:u??a.record.of,version:r.version,failed:void 0})}catch(r){if(!(r instanceof w))throw r;if(!Ia(o))return;Pe({failed:B(r.complaint)}),p_(r)&&setTimeout(()=>a.record.failed!==void 0&&void po(),a_)}}var p_=({may_pass:e,status:t})=>e||t>=500||[401,403].includes(t);function Ea({record:e},t){if(++ac,!Ia(t))return;let n=new Set(e.batches.map(({begun:u})=>u.id)),o=u=>n.has(u.begun.id),i=u=>e.batches.find(({begun:c})=>c.id===u.begun.id)??u,r=e.batches.filter(({begun:u})=>!a.record.batches.some(c=>c.begun.id===u.id)),l=[...a.record.batches.map(u=>o(u)?i(u):u),...r];Pe({batches:l,of:e.run_batches??a.record.of})}function Bi(){let{batches:e,chosen:t}=a.record;return e.find(({begun:n})=>n.id===t)??e.at(-1)}var Na=(e,t)=>sessionStorage.setItem(d_(e),t);function pn(e){Na(a.record,e),Pe({chosen:e}),po()}var Cn=(e,t)=>a.record.batches.filter(n=>n.number===e&&(!t||new Date(n.begun.begun_at)>=new Date(t))).at(-1),ja=({pieces:e,written:t})=>`${e} ${e===1?"piece":"pieces"}, ${t}`;function Ha({blanks:e,cured:t,rows:n},o){let i=/^cured\.(.+)$/.exec(o)?.[1],r=i&&t?.find(({on:l})=>l===i);return i?r?ja(r):"":[...e??[],...n??[]].find(l=>l.key===o)?.noted??""}function lc(e,{key:t,text:n,value:o,is_left:i,lacks:r}){let l=Ha(e,t),u=cn(e.begun.id,t);if(o===l&&!r&&(!u||!u.was_sent&&u.seen===l))return u&&Ur(({id:_})=>_===u.id),Li();if(u?.value===o&&!u.lacks==!r&&(u.refused??!u.is_typed))return;let{run:p,together:m}=a.record;s_({run:p,together:m,batch:e.begun.id,key:t,text:n,value:o,seen:l,is_typed:!i,lacks:r}),Li(),i?zr():setTimeout(()=>{zr()},ec+50)}var fo=(e,t,n)=>lc(e,{key:t,text:n,value:n,is_left:!0});function m_(e){let{refused:t,value:n}=e;if(!t)return;let{answers:o={confirmed:n}}=t,i=(l=[],u)=>u===void 0?l:[...l,u],r=t.is_asked?{confirmed:i(e.confirmed,o.confirmed),beyond:i(e.beyond,o.beyond)}:{seen:t.noted??e.seen};Wa(e.id,{...r,refused:void 0}),Li(),zr()}function f_(e){Ur(({id:t})=>t===e.id),Li()}var rc=!1;async function zr(){if(!rc){rc=!0;try{await navigator.locks.request(Mi(),ZT)}finally{rc=!1}Bn().some(e=>!e.refused&&!e.lacks)&&setTimeout(()=>{zr()},a_)}}async function ZT(){for(let e=ic();e;e=ic())if(!await eR(e))return}function XT({batch:e,run:t,together:n}){let{record:o}=a;return o.batches.some(({begun:r})=>r.id===e)?{run:o.run,together:o.together}:{run:t,together:n}}async function eR(e){let{id:t,batch:n,key:o,value:i,seen:r,confirmed:l,beyond:u}=e,c=XT(e);Wa(t,{was_sent:!0});try{let p=await Ba({...c,batch:n,act:t,set:{[o]:i||null},seen:{[o]:r||null},confirmed:l,"beyond-stock":u});return Ur(m=>m.id===t),tR(e,p),Ea(p,c),Pe({acts:Bn(),unsent:void 0}),!0}catch(p){if(!(p instanceof w))throw p;return p_(p)?(Pe({unsent:B(p.complaint)}),!1):(await nR(e,p),!0)}}function tR({batch:e,key:t},{record:n}){let o=n.batches.find(({begun:i})=>i.id===e);oc(i=>i.batch!==e?i:i.key===t?o?{...i,seen:Ha(o,t)}:i:i.refused&&!i.refused.is_asked&&i.refused.noted===void 0?{...i,refused:void 0}:i)}async function nR({id:e,value:t},{complaint:n}){let{asks:o,choices:i,problem:r}=n,l=o==="seen"?i?.[0]?.seen??"":void 0,u=l===!0?"":l,c=o?r:B(n);u===t?Ur(p=>p.id===e):Wa(e,{refused:{words:c,is_asked:o==="confirmed"||o==="beyond-stock",noted:u,...oR(i)}}),Li(),await po()}function oR(e=[]){let t=e[0]?.confirmed,n=e[0]?.["beyond-stock"];return t===void 0&&n===void 0?{}:{answers:{confirmed:t,beyond:n},is_lye:t===iR}}var iR="lye-heavy",qa=e=>a.record.acts.filter(t=>t.batch===e&&(t.refused??t.lacks)).length;async function Ua(e,t){if(!e||!t)return;let n=e.blanks?e:await rR(e.begun.id),o=n?.blanks?.filter(dc)??[];n&&o.length===1&&fo(n,o[0].key,t)}async function rR(e){try{return(await qr(a.record,e)).record.batches.find(({begun:t})=>t.id===e)}catch(t){if(!(t instanceof w))throw t;return}}var dc=({key:e})=>/^topping(-\d+)?\.cup$/.test(e);var sR=()=>a.view==="order",uc=()=>sR()?a.recorded:void 0,cc=e=>f({recorded:e});async function za(){if(a.recorded!==void 0)return;let{stock:e}=await Lo(new Map,{stock:""});e!==void 0&&a.recorded===void 0&&cc(e)}var h_=()=>Rn("GET","/api/stock?names"),g_=e=>xt("/api/stock/act",e),Ka=e=>Rn("GET",`/api/trail?of=${encodeURIComponent(e)}`);var aR=2e3,Wn=e=>f({stock:{...a.stock,...e}}),__=()=>a.view==="shelf"||a.view==="trail",pc=()=>__()?a.stock.version:void 0,lR=({may_pass:e,status:t})=>e||t>=500||[401,403].includes(t);async function ho(){try{let{version:t,stock:n}=await h_();Wn({version:t,list:n,failed:void 0})}catch(t){if(!(t instanceof w))throw t;Wn({failed:B(t.complaint)}),lR(t)&&setTimeout(()=>__()&&a.stock.failed!==void 0&&void ho(),aR)}let{trail:e}=a.stock;a.view==="trail"&&e&&await $_(e.of)}function Le(e,t){let n=a.stock.trail?.of===e;f({view:"trail",stock:{...a.stock,trail:{...n&&a.stock.trail,of:e,order:t}}}),a.stock.version===void 0?ho():$_(e)}async function $_(e){let t=n=>{let o=a.stock.trail;o?.of===e&&Wn({trail:{of:e,order:o.order,...n}})};try{let{version:n,trail:o}=await Ka(e);t({trail:o}),Wn({version:n})}catch(n){if(!(n instanceof w))throw n;let{problem:o,choices:i=[]}=n.complaint,r=i.flatMap(({what:l})=>l??[]);t(r.length?{complaint:`${o}: which is meant?`,choices:r}:{complaint:B(n.complaint)})}}var b_=()=>`shelf ${a.files?.folder??""}`;function mc(e){sessionStorage.setItem(b_(),JSON.stringify(e)),Wn({forms:e})}function w_(){try{Wn({forms:JSON.parse(sessionStorage.getItem(b_())??"[]")})}catch{Wn({forms:[]})}}var fc=(e,t)=>e.kind===t.kind&&e.of===t.of,In=e=>a.stock.forms.find(t=>fc(t,e));function hc(e){if(In(e))return;let t={on:dR(),...e.typed};mc([...a.stock.forms,{sources:[],confirmed:[],act:crypto.randomUUID(),...e,typed:t}]),Wn({told:void 0})}var gc=e=>mc(a.stock.forms.filter(t=>!fc(t,e))),Ci=(e,t)=>mc(a.stock.forms.map(n=>fc(n,e)?{...n,...t}:n)),Jt=(e,t)=>Ci(e,{...t,typed:{...e.typed,...t.typed},act:crypto.randomUUID(),confirmed:[],complaint:void 0});function Xo(e,t,n){Ci(e,{complaint:{file:"",field:t,problem:n,remedy:"",line:n}}),D(n)}async function Ja(e,t){let n=In(e);if(!n||n.is_asking)return!1;Ci(e,{is_asking:!0,complaint:void 0});try{let{stock:o}=await g_({...t,act:n.act,confirmed:n.confirmed,seen:n.seen}),i=o.done.length?o.done:["It was recorded already."];return gc(e),Wn({told:{of:e.of,sentences:i}}),D(i.join(" ")),await ho(),!0}catch(o){if(!(o instanceof w))throw o;return Ci(e,{is_asking:!1,complaint:o.complaint}),D(`Not recorded: ${o.complaint.problem}`),o.complaint.asks==="seen"&&await ho(),!1}}function y_(e,t){Ci(e,{confirmed:[...e.confirmed,t],complaint:void 0})}var v_=(e,t)=>Ci(e,{seen:t,complaint:void 0});function dR(){let e=new Date;return[e.getFullYear(),e.getMonth()+1,e.getDate()].map(t=>String(t).padStart(2,"0")).join("-")}var Jr=()=>f({own_fats:{}});function go(e){let t=Vr(e);return Array.isArray(t)?[...t,...a.fats]:a.fats}function Vr(e){let t=a.formulas[e],n=$(t?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||t===void 0)return;let o=a.beside.own_fats;if(o&&[ot(t.file)+n,n].includes(o.file))return x_(o.now)??"none";let i=`${t.file}
${n}`,r=a.own_fats[i];return r||(k_(i,"waiting"),uR(n,t.file).then(l=>k_(i,l)),"waiting")}var k_=(e,t)=>f({own_fats:{...a.own_fats,[e]:t}});async function uR(e,t){for(let n of new Set([ot(t)+e,e])){let o=x_(await cR(n));if(o)return o}return"none"}var x_=e=>Array.isArray(e?.fats)?e.fats.map(pR):void 0;async function cR(e){try{return ye((await ze(e)).text)}catch{return}}var pR=({id:e,name:t,saponification_value:n})=>({id:String(e??""),name:String(t??e??""),own:mR(n)});function mR(e){if(e===null||typeof e!="object")return String(e??"");let{low:t,high:n}=e;return`${String(t)} to ${String(n)}`}var Wi=[],Qr;function Va(){Wi.length=0;for(let{file:e,shipped:t}of a.files?.moulds??[])t||Wi.push(e);Qr===void 0&&T_()}function _c(e){let t=a.own_moulds[e];return!t&&e!==Qr&&!Wi.includes(e)&&Wi.push(e),Qr===void 0&&Wi.length&&T_(),t}async function T_(){for(;(Qr=Wi.shift())!==void 0;){let e=Qr,t=await hR(e);t&&f({own_moulds:{...a.own_moulds,[e]:t}})}}var fR=2e3;async function hR(e){try{let{pockets:t}=await rn({file:e});return{brimful_ml:t[0].brimful_ml,cavities:t.length}}catch(t){if(!(t instanceof w))throw t;if(t.may_pass){window.setTimeout(()=>_c(e),fR);return}let{field:n,problem:o,remedy:i}=t.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var A_=()=>f({own_tips:{}}),$c=!1;function Gr(){return!a.tips&&!$c&&($c=!0,qf().then(e=>f({tips:e}),D_).finally(()=>$c=!1)),a.tips??[]}function bc(e){let t=qt(e),n=a.beside.own_tips;if(n?.file===t)return S_(n.now);let o=a.own_tips[t];return o||!e||a.typed?o??[]:(R_(t,[]),ze(t).then(({text:i})=>R_(t,S_(ye(i))),D_),[])}var R_=(e,t)=>f({own_tips:{...a.own_tips,[e]:t}});function S_(e){let t=e?.tips;return(Array.isArray(t)?t:[]).map(n=>({name:String(n.name)}))}function D_(e){if(!(e instanceof w))throw e}var Qa=300,gR=5e3,L_=2e3,_R=500,P_=!1,Yr=new AbortController,Ya=()=>Yr.abort(),B_=()=>document.visibilityState==="hidden";function Za(){if(P_)return;P_=!0;let e=async()=>{Yr=new AbortController;let t=await $R(Yr).then(()=>B_()?gR:Qa,()=>Yr.signal.aborted?Qa:L_);await O_(Qa),await O_(t-Qa,Yr.signal),e()};e()}var O_=(e,t)=>new Promise(n=>{if(e<=0||t?.aborted)return n();setTimeout(n,e),t?.addEventListener("abort",()=>n())}),C_=()=>[a.run,...a.order?[a.order.open]:[],...a.mould?[a.mould.open]:[],...un()],Ga=()=>{let e=kg(),t=c_();return t?{version:e?.version,...t}:e&&{...e,record:u_()}},wc=()=>pc()??uc(),W_=()=>new Map(C_().flatMap(ag)),F_=()=>JSON.stringify([[...W_().keys()],[...Du().keys()],Ga()?.run??null,Ga()?.record??null,wc()??null]);async function $R(e){let t=mg();t.length&&await M_(t);let[n,o]=[W_(),Du()],i=new Map([...o,...n]),r=[...o].every(([c,p])=>i.get(c)===p),l=r&&!B_()?await bR(i,e):await Lo(i,{bench:Ga(),stock:wc()});l.bench!==void 0&&await Ln(),l.record!==void 0&&await po(),l.stock!==void 0&&await wR(l.stock),Pu(l.unreadable),await yR(n,l);let u=pg(o,r?l:await Lo(o));u.length&&await M_(u)}async function bR(e,t){let[n,o]=[F_(),Date.now()],i=window.setInterval(()=>{(F_()!==n||Date.now()-o>Lf+L_)&&t.abort()},_R);try{return await Bf(e,{bench:Ga(),stock:wc()},t.signal)}finally{window.clearInterval(i)}}async function wR(e){uc()!==void 0&&cc(e),pc()!==void 0&&await ho()}async function yR(e,{changed:t}){let n=un();for(let o of C_()){let i=e.get(o.file);i===void 0||!(o.file in t)||(n.has(o)?await vR(o,i):await ku(o,i,Au,()=>{}))}}async function vR(e,t){let n=!1,o=()=>{n=!0,Ou([e.file])};try{await ku(e,t,Au,o)&&Jr()}finally{n&&se()}}async function M_(e){Ou(e);try{await xu(),Jr(),A_(),f({measured:void 0}),Kt(),Va(),await Promise.all([co(),Di(!0)])}finally{se()}}async function E_(e){let t=await Yf();f({files:t});let n=Gf(t,e.run);try{await Xa(n,n===e.run||!e.run?e.view:void 0)}catch(o){let i=o instanceof w?o.message:`The run opened last can no longer be read: ${String(o)}`;f({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function vc(){try{let[e,t]=await Promise.all([jf(),Hf()]);f({fats:e,catalogue:t})}catch(e){if(!(e instanceof w))throw e;e.may_pass?window.setTimeout(()=>{vc()},kR):f({fault:e.message})}}var kR=2e3,xR=()=>new Promise(e=>setTimeout(e,400)),yc={};function En(e,t){return De(),Xa(e,t)}async function Xa(e,t="weigh"){if(!e)return f({view:"runs"});let n=yc={name:e},o=a.view;a.run.file&&G(a.run)&&await dn();let i=await We(No,e);if(yc!==n||(ki(i),xa(),await Promise.race([wg(),xR()]),a.run!==i))return;a.view===o&&yc===n&&f({view:t}),localStorage.setItem("run",i.file),G(i)&&(so(i),no());let r=Ri().finally(Kt);await Promise.all([r,co(),Di()]),Za()}var I_=()=>(a.files?.studios??[]).some(e=>e.file==="studio.json");async function el(e){let t=De(),n=a.run.now,o=n.losses??{},i={schema:"brimwright.run/2",id:crypto.randomUUID(),name:e.name,sell:e.sell,pour:{mould:e.mould,formula:e.formula}};e.slice&&(i.cut={bar:{thickness:e.slice},...I_()?{}:{kerf:""}}),I_()||(i.note=`Losses, scales and spoilage were taken over from "${String(n.name)}": check them.`,n.spoilage!==void 0&&(i.spoilage=n.spoilage),i.losses={pour:o.pour??{}},i.scales=n.scales??{},n.money&&!a.run.shipped&&(i.money=n.money));let{file:r}=await St({kind:No,name:Nt(e.name,".run.json"),text:re(i)});t()&&(ue("set-up pour"),e.slice&&ue("set-up cut"),await En(r,"set-up"))}var TR="examples/plain_bars.run.json";function at(e){Jr();let t=Sn(a.view)?a.view:a.came_from;f({view:"formula",came_from:t,formula_of:e,picking:void 0,typed:void 0})}async function Zr(e){let t=De(),n=["pour","pipe"].find(i=>a.run.file&&a.formulas[i]?.file===e);if(n)return at(n);a.run.file||await Xa(TR,"reading");let o=await We(Ho,e);t()&&RR(o)}function RR(e){f({run_steps:{past:a.past,future:a.future},past:[],future:[]}),On("apart",e),G(e)&&so(e),f({plan:void 0,complaint:void 0}),at("apart"),Ri()}async function SR(){let e=a.formulas.apart!==void 0;return await tl()?(f({view:e?"weigh":a.came_from,typed:void 0}),!0):!1}async function tl(){return a.formulas.apart?await AR()?(Ri(),!0):!1:!0}async function AR(){try{await rt()}catch(t){if(!(t instanceof w))throw t;return f({complaint:t.complaint}),!1}if(a.formulas.apart?.theirs)return D("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;On("apart",void 0);let e={...a.dangers,apart:[]};return f({dangers:e,...a.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function N_(e){let t=a.view==="formula"&&a.formulas[a.formula_of]===e,n=a.formulas.apart===e;for(let o of["pour","pipe"])a.formulas[o]===e&&On(o,void 0);n&&await tl(),t&&f({view:n?"formulas":"set-up",typed:void 0})}async function kc(e){let{file:t}=a.formulas.apart;await SR()&&Z("run",`/${e}/formula`,t)}var DR=e=>({schema:"brimwright.formula/2",name:e,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),j_=e=>q_(DR(e));async function H_(e,t){let{$schema:n,...o}=JSON.parse((await ze(e)).text);await q_({...o,name:t},e)}async function q_(e,t){let n=De(),o=Nt(String(e.name),".formula.json"),{file:i}=await St({kind:Ho,name:o,text:re(e),from:t});n()&&await Zr(i)}var PR=30,OR=2e3,U_=0,xc=!1,Tc=!1;function Rc(e,t,n){let o=t==="mesh"?a.mesh:void 0;f({mould:{way:t,title:n,open:e,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),nl()}var mn=()=>f({mould:void 0,mesh:void 0}),Ii=(e,t,n)=>Rc(zo(it,e),t,n);async function z_(e,t){let n=De(),o=await We(it,e,t?crypto.randomUUID():e);if(!n())return!1;let i=String(o.now.name??e);return t&&v(o,{now:{...o.now,name:""}}),Rc(o,"form",t?`A copy of ${i}`:`Change ${i}`),!0}async function K_({id:e,file:t,text:n}){let o=De(),i=t?await We(it,t,e):zo(it,JSON.parse(n),e);return o()?(Rc(i,"form",String(i.now.name??"").trim()||"A mould of your own"),!0):!1}var ie=()=>a.mould,K=()=>ie().open.now;function Be(e,t){Ai(ie(),e),Ie(ie().open,M(K(),e,t))}var J_=()=>Ra(ie()),V_=()=>Sa(ie()),FR=["name","note","owned","unmould_after"];function Sc(e){let t=K(),n=Object.keys({...e,...t}).filter(l=>e?.[l]!==t[l]);(!e||n.some(l=>!FR.includes(l)))&&v(ie(),{is_old:!0});let i=n.some(l=>ie().complaint?.field===`/${l}`),r=n.some(l=>!["name","note"].includes(l));(ie().is_old||i||r)&&nl()}function nl(){clearTimeout(U_),U_=window.setTimeout(()=>{MR()},PR)}async function MR(){if(xc)return void(Tc=!0);let{mould:e}=a;if(!e)return;let t=e.open.now;if(!(!Et(t,"shape")&&!Et(t,"mesh"))){if(Ar(t).length)return v(e,{complaint:void 0});xc=!0;try{let n=it.written(t),o={file:e.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await Fi(o);e.open.now===t&&v(e,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof w))throw n;e.open.now===t&&e===a.mould&&Ac(n),n.may_pass&&window.setTimeout(nl,OR)}finally{xc=!1,Tc&&nl(),Tc=!1}}}function Ac(e){let{field:t,problem:n,remedy:o,keep:i,entry:r}=e.complaint,l=t?`${n}; ${o}`:e.message;v(ie(),{complaint:{field:fa(K(),t),line:l,keep:i&&{...i,at:fa(K(),i.at)},about:r===void 0?void 0:fa(K(),`${t}/${r}`)}})}var Q_={};async function Nn(e){De();let t=Q_={name:e},n=a.view;if(a.order?.open.file!==e){a.order&&G(a.order.open)&&await dn(a.order.open);let o=await We(jo,e);if(Q_!==t)return;let i=G(o)?[o.saved??{}]:[];f({order:{open:o,past:i,future:[],times:""},typed:void 0}),G(o)&&no(o)}a.view===n&&f({view:"order",typed:void 0}),Za()}function G_(){f({order:void 0,...a.view==="order"?{view:"orders"}:{}})}async function Y_(e){let t=De(),n={schema:"brimwright.order/1",id:crypto.randomUUID(),for:e,lines:[]},o=jo.new_name(zo(jo,n)),{file:i}=await St({kind:jo,name:o,text:re(n)});t()&&await Nn(i)}var _e=()=>a.order,Z_=()=>Ra(_e()),X_=()=>Sa(_e());var ol=e=>Object.values(a.formulas).includes(e),Ei=e=>Object.values(a.beside).includes(e),e$=e=>`${String($(e,"/pour/formula"))}
${String($(e,"/pipe/formula"))}`;function LR(e,t){$(e,"/pour/mould")!==$(t,"/pour/mould")&&Kt(),e$(e)!==e$(t)&&co(),se(),no()}var BR=se;function CR(e,t){for(let n of["pour","pipe"]){if(a.formulas[n]!==e)continue;let o=`/${n}/formula`,i=r=>String($(r,o)??"").endsWith(mt(t))?M(r,o,e.file):r;Eu(a.run,i),i(a.run.now)!==a.run.now&&Ie(a.run,i(a.run.now))}}async function WR(e){e===a.run?(ki(),localStorage.removeItem("run"),f({view:"runs"})):e===a.mould?.open?mn():e===a.order?.open?G_():Ei(e)?Aa(e):await N_(e),await Dt(),a.run.file&&se()}function t$(){jt("edited",({file:e,before:t})=>{_g(),e===a.run?LR(t,e.now):ol(e)||Ei(e)?BR():e===a.mould?.open?Sc(t):e===a.order?.open&&no(e)}),jt("gave_way",({file:e})=>{if(f({typed:void 0}),e===a.mould?.open)return Sc();e!==a.order?.open&&(e===a.run&&(Kt(),co().then(se)),se())}),jt("left_deleted",({file:e})=>{WR(e)}),jt("unwritten",({file:e})=>{e===a.run||e===a.order?.open?dn(e):(ol(e)||Ei(e))&&se()}),jt("conflict",({file:e})=>{(ol(e)||Ei(e))&&f({is_old:!0})}),jt("renamed",({file:e})=>{Ei(e)&&a.held_open!==void 0&&f({held_open:e.file}),e===a.run&&(localStorage.setItem("run",e.file),Kt(),co()),se()}),jt("copied",({file:e,from:t})=>{ol(e)&&CR(e,t),Ei(e)&&Ng(e,t),a.held_open===t&&f({held_open:e.file}),e===a.run&&(vg(t),l_(t),localStorage.setItem("run",e.file),Di().then(se))})}var _t=s`<span aria-hidden="true">⚠</span> Danger`;function Xr(e,t="",n){let o=_o(e,n);return o.length?s`<div class="dangers" id=${t||d}>
    ${o.map(i=>s`<p class="danger"><strong>${_t}</strong> ${i}</p>`)}
  </div>`:d}function _o(e,t){let n=e==="pour"?"pipe":"pour";return a.dangers[e==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>e==="apart"||o.batter!==n).filter(o=>t===void 0||o.batch_pieces===void 0||o.batch_pieces===t).map(o=>o.text)}function n$(){let e=ct(a.view)||a.view==="order"||a.view==="trail"||Or()==="apart",t=a.dangers.run.map(({text:n})=>({from:e?`In the run "${String(a.run.now.name??a.run.file)}": `:"",text:n}));return[...a.dangers.apart.map(({text:n})=>({from:"",text:n})),...t]}var o$=()=>n$().length>0;function i$(){let e=n$(),t=NR(),n=t||ct(a.view)?"":Fu();return!e.length&&!t&&!n?d:s`<section class="foremost" aria-label="Danger, and figures from before">
    ${e.length?s`<div role="alert" class="dangers">
            ${e.map(({from:o,text:i})=>s`<p class="danger"><strong>${_t}</strong> ${o}${i}</p>`)}
          </div>`:d}
    ${t?s`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${t}</p>
            ${IR()?s`<button type="button" @click=${ER}>To the question</button>`:d}
          </div>`:d}
    ${n?s`<div class="taken-in">
            <p>${n}</p>
            <button type="button" @click=${()=>f({taken_in:void 0})}>Close</button>
          </div>`:d}
  </section>`}var IR=()=>Fn(Or())!==void 0&&!ct(a.view);function ER(){let e=document.querySelector(".banner h2");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}),e.scrollIntoView({block:"start"}))}function NR(){if(!a.run.file||a.view==="reading")return"";let e=Fn(Or());if(e&&Ko(e))return`${e.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`;if(e)return`${e.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`;let t=a.changed_beside;return a.is_old&&t.length?`${Ee(t)} ${t.length===1?"was":"were"} changed outside this page: what is struck through is not to be weighed.`:""}var jn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},il=e=>(...t)=>({_$litDirective$:e,values:t}),Ni=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,o){this._$Ct=t,this._$AM=n,this._$Ci=o}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}};var{I:jR}=$h,r$=e=>e;var a$=e=>e.strings===void 0,s$=()=>document.createComment(""),ji=(e,t,n)=>{let o=e._$AA.parentNode,i=t===void 0?e._$AB:t._$AA;if(n===void 0){let r=o.insertBefore(s$(),i),l=o.insertBefore(s$(),i);n=new jR(r,l,e,e.options)}else{let r=n._$AB.nextSibling,l=n._$AM,u=l!==e;if(u){let c;n._$AQ?.(e),n._$AM=e,n._$AP!==void 0&&(c=e._$AU)!==l._$AU&&n._$AP(c)}if(r!==i||u){let c=n._$AA;for(;c!==r;){let p=r$(c).nextSibling;r$(o).insertBefore(c,i),c=p}}}return n},$o=(e,t,n=e)=>(e._$AI(t,n),e),HR={},rl=(e,t=HR)=>e._$AH=t,l$=e=>e._$AH,sl=e=>{e._$AR(),e._$AA.remove()};var P=il(class extends Ni{constructor(e){if(super(e),e.type!==jn.PROPERTY&&e.type!==jn.ATTRIBUTE&&e.type!==jn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!a$(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[t]){if(t===Ke||t===d)return t;let n=e.element,o=e.name;if(e.type===jn.PROPERTY){if(t===n[o])return Ke}else if(e.type===jn.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(o))return Ke}else if(e.type===jn.ATTRIBUTE&&n.getAttribute(o)===t+"")return Ke;return rl(e),t}});var et=e=>e.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function Hn(e,t){let n=et(t).split(/\s+/).filter(Boolean),o=i=>n.every(r=>et(i).includes(r));return o(`${e.name} ${e.id.replaceAll("_"," ")}`)?e.name:"own"in e?void 0:[...e.also_called,e.inci].find(o)}function al(e,t){let n=et(e).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!t.some(r=>r.id===i))return i}}var Hi=28.349523125,p$=25.4,qR=29.5735295625;function Je(e,t){return e.toFixed(t).replace(/^-(0(\.0*)?)$/,"$1")}function S(e,t){return m$(Je(e,t))}var m$=e=>e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function lt(e){let t=[1,2,3].find(n=>Number(e.toFixed(n))!==0);return t!==void 0?`${Je(e,t)} %`:Dc(e)?"just below 0 %":"0.0 %"}var Dc=e=>e<0||Object.is(e,-0),f$=e=>Math.abs(e-Math.round(e))<1e-6;function d$(e){return e?[0,1,2,3].find(t=>f$(e*10**t))??3:0}function u$(e){return Math.max(0,Math.ceil(-Math.log10(e)-1e-9))}function UR(e){return[0,1,2].find(t=>e.every(n=>f$(n*10**t)))??3}function ts(e,t,n){return e==="metric"?[t,""]:e==="us"?[n,""]:[t,n]}function ae(e,t){let n=r=>e[`${t}${r}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-UR([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var h$=.001;function es(e,t,n,o,i=1e-9){let r=10**n;return Je(o==="nearest"?e/t:Math.floor((e+i)/t*r)/r,n)}var c$=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function zR(e){if(!c$.some(t=>Math.abs(t*10-e)<1e-9||Math.abs(t-e)<1e-9))return c$.find(t=>Math.abs(t*Hi-e)<.6*h$)}function X(e,t,n="nearest"){let o=t.scale_step_g||.1,i=zR(o),r=Math.min(.6*h$,o/2),l=i?es(t.g,1,u$(o),n):es(t.g,1,d$(o),n,r),u=i?es(t.g,Hi,d$(i),n,r):es(t.g,Hi,u$(o/Hi),n),[c,p]=[`${t.g_text??l} g`,`${t.oz_text??u} oz`];return(t.reads?t.reads==="oz":i!==void 0)&&e==="both"?[p,c]:ts(e,c,p)}var H=(e,t,n=1,o="nearest")=>X(e,{g:t,scale_step_g:10**-n},o);function Pt(e,{g:t=0,pieces:n}){if(n!==void 0)return`${n} ${n===1?"piece":"pieces"}`;let o=l=>m$(es(t,l,3,"down")),i=16*Hi,r=t<1e3?`${o(1)} g`:`${o(1e3)} kg`;return x(ts(e,r,t<i?`${o(Hi)} oz`:`${o(i)} lb`))}function ke(e,t,n=1){return ts(e,`${Je(t,n)} ml`,`${Je(t/qR,2)} US fl oz`)}function $e(e,t){return ts(e,`${S(t,1)} mm`,KR(t))}function KR(e){let t=Math.round(Math.abs(e)/p$*32),n=e<0&&t?"-":"",o=t%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let r=Math.floor(t/32),l=o?`${o}/${i}`:"";return`${n}${[r||!o?String(r):"",l].filter(Boolean).join(" ")} in`}var Pc=([e])=>e,x=([e,t])=>t?`${e} (${t})`:e;function g$(e,t){return ts(e,`${Je(t,0)} \xB0C`,`${Je(t*1.8+32,0)} \xB0F`)}function Vt(e){let t=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(e??""));if(!t)return;let n=Number(t[1]??0)+Number(t[2].replace(",","."))/Number(t[3]??1),o={mm:1,cm:10,m:1e3}[t[4]]??p$;return n*o}function Ot(e){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(e??""))?.[1]?.trim()??""}var Oe=e=>/^\s*[+-]?\d[\d.,/\s]*$/.test(e);function N(e){let t=new Date(/^\d{4}-\d\d-\d\d$/.test(e)?`${e}T12:00`:e);return Number.isNaN(t.getTime())?e:t.toLocaleDateString("en-GB",{dateStyle:"medium"})}function xe(e){return`${new Date(`${e}T12:00`).toLocaleDateString("en-GB",{weekday:"short"})} ${N(e)}`}var _$=e=>new Date(`${e}T12:00`).toLocaleDateString("en-GB",{day:"numeric",month:"short"}),Te=e=>e.replaceAll(/\d{4}-\d\d-\d\d/g,N);function ll(e){let t=Math.ceil(e),[n,o]=[Math.floor(t/60),t%60];return[n?`${n} h`:"",o||!n?`${o} min`:""].filter(Boolean).join(" ")}function bo(e){let t=Math.round(e/60);return e>=60&&e%60===0&&t<90?`${t} min`:e<90?`${Math.round(e)} s`:t<90?`${t} min`:`${Math.floor(t/60)} h ${t%60} min`}function w$(e){let t=Vt(e.round?.radius);if(t)return $$(t,R`<circle class="plain" r=${t} />`);let n=JR(e);if(!n)return d;let o=Math.max(...n.map(([i,r])=>Math.hypot(i,r)));return o>0?$$(o,R`<path class="plain" d=${`M${n.map(i=>i.join(" ")).join("L")}Z`} />`):d}var $$=(e,t)=>s`<svg class="tip" viewBox="${-1.1*e} ${-1.1*e} ${2.2*e} ${2.2*e}" aria-hidden="true">
    ${t}
  </svg>`;function JR({star:e,outline:t}){if(e&&typeof e=="object"&&!Array.isArray(e))return VR(e);if(!Array.isArray(t))return;let n=t.map(o=>[b$(o,"x"),-b$(o,"y")]);return n.some(([o,i])=>Number.isNaN(o)||Number.isNaN(i))?void 0:n}function b$(e,t){let n=String(e[t]??"").trim();return(n.startsWith("-")?-1:1)*(Vt(n.replace(/^-/,""))??NaN)}function VR({points:e,outer_radius:t,inner_radius:n}){let[o,i]=[Vt(t),Vt(n)];if(!(!o||!i||typeof e!="number"||e<3||e>60))return Array.from({length:2*e},(r,l)=>{let u=Math.PI*l/e,c=l%2?i:o;return[c*Math.sin(u),-c*Math.cos(u)]})}var Oc=!1;function y$(e){let{plan:t,explanation:n}=a,o=n?.of!==t;return o&&!Oc&&GR(),{workings:QR(n?.workings,e),complaint:n?.complaint,is_old:o}}function QR(e,t){let n=e?.get(t);return n?[n]:[...e?.values()??[]].filter(({of:o})=>o.startsWith(`${t}.`))}async function GR(){let{plan:e,planned:t}=a;if(!(!e||!t)){Oc=!0;try{let{how:n}=await Cf(t);f({explanation:{of:e,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof w))throw n;f({explanation:{of:e,workings:new Map,complaint:n.message}})}finally{Oc=!1}}}var v$=R`<path class="wall" d="M30 10l8 52h44l8-52" />`,Fc={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:R`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${v$}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},margin:{name:"margin",words:"What is left of the price after cost and fees, as a share of the price without tax."},markup:{name:"markup",words:"What is put on the cost, as a share of the cost. A markup of 100 % is a margin of 50 %."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:R`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:R`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${v$}<path class="measure" d="M20 10h80" />`}};var Mc=e=>`term ${e}`;function qn(e){return s`<button
    type="button"
    class="ask-term"
    aria-expanded=${a.open.has(Mc(e))?"true":"false"}
    aria-label="What ${Fc[e].name} means"
    @click=${()=>je("open",Mc(e))}
  >
    <span aria-hidden="true">?</span>
  </button>`}function Qt(e){if(!a.open.has(Mc(e)))return d;let{name:t,words:n,drawing:o}=Fc[e];return s`<span class="term-words" role="note"
    >${o?s`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${o}</svg>`:d}<span
      ><b>${t}</b>: ${n}</span
    ></span
  >`}var wo=e=>s`<span class="term">${qn(e)}${Qt(e)}</span>`;function I({key:e,label:t,shown:n,of:o,working:i,size:r="plain",note:l,term:u}){let c=a.open.has(e),p=`sum-${e.replaceAll(/[^\w]/g,"-")}`;return s`<div class="figure ${u?"explains":""}">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:d}
      @click=${()=>je("open",e)}
    >
      <span class="name">${t}${l?s`<small>${l}</small>`:d}</span>
      <span class="value ${r==="weigh"?"large":""} ${a.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?s` <i>${n[1]}</i>`:d}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${u?s`${qn(u)}${Qt(u)}`:d}
    ${c?s`<div class="sum" id=${p}>${i?dl(i):Lc(o)}</div>`:d}
  </div>`}var ei=(e,t,n)=>I({key:e,label:t,shown:["",""],of:n});function Lc(e){let{workings:t,complaint:n,is_old:o}=y$(e);return t.length?s`<div class=${o?"old":""}>${t.map(dl)}</div>`:o?s`<p class="old" role="status">Asking how it is calculated ...</p>`:s`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function dl({formula:e,with:t,sum:n,rounded:o,comes_to:i,sources:r}){let l=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return s`<p class="formula">${e}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${t.map(({name:u,value:c,from:p})=>s`<tr>
              <th scope="row">${u}</th>
              <td>${c}</td>
              <td>${p??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${l?s`<p class="comes-to">${l}${o?`, rounded ${o}`:""}</p>`:d}
    ${r.length?s`<p class="sources">From: ${r.join("; ")}.</p>`:d}`}var ti,ns=[],Un=()=>ti!==void 0;function $t(e,t,n,o){if(!ti||ti.some(r=>r.id===n))return;let i=ns.flatMap(({part:r})=>r??[]);ti.push({of:e,at:t,id:n,label:o,part:i.at(-1)??"",folds:ns.flatMap(({fold:r})=>r??[])})}function Ft(e,t){ns.push(e);try{return t()}finally{ns.pop()}}var k$=()=>{},x$=e=>{k$=e},ul,YR=()=>[a.run.now,...Object.values(a.formulas).map(e=>e.now),...Object.values(a.beside).map(e=>e.now),a.formulas.apart,a.plan,a.fats,a.files];function qi(){if(Un())return[];let e=YR();return ul?.of.length===e.length&&e.every((n,o)=>n===ul.of[o])||(ul={of:e,wanted:ZR()}),ul.wanted}function ZR(){ti=[],ns=[];try{return k$(),ti}finally{ti=void 0}}function T$(e){a.touched.has(e)||f({touched:new Set(a.touched).add(e)})}function R$(e,t){if(a.has_asked)return!1;let n=qi().filter(o=>o.of===e&&(o.at===t||o.at.startsWith(`${t}/`)));return n.length>0&&n.every(o=>!a.touched.has(o.id))}var Y=(e,t)=>`f-${e}${t.replaceAll(/[^\w]/g,"-")}`;function cl(e){if(e==="order")return a.order?.quoted?.complaint??a.order?.days?.complaint;let t=(n,o)=>o===a.plan?n?.complaint:void 0;return a.complaint??t(a.quoted,a.quoted?.of)??t(a.run_days,a.run_days?.of[0])}function Ve(e,t){let n=cl(e);if(!(!n||n.field!==t&&!n.field.startsWith(`${t}/`)))return Mt(e)&&!R$(e,n.field)?B(n):void 0}function Fe(e,t){return cl(e)?.field===t?Ve(e,t):void 0}function Mt(e){let t=cl(e),n=ao(e)?.file;return!t||n===void 0?!1:t.file===""||t.file===n||t.file.endsWith(`/${n}`)}function XR(e,t){let n=t.slice(0,t.lastIndexOf("/"));return Object.keys(g(e,n)??{}).length>1?t:n}function fn(){let e=cl();if(e)for(let t of["run",...he,...Ae])for(let n=e.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Ve(t,n)&&document.getElementById(Y(t,n));if(o)return o}}function e0(e,t){let n=e.of??"run";if(e.optional&&t.trim()==="")return;if(e.number)return/^\s*\d+([.,]\d+)?\s*$/.test(t)?Number(t.trim().replace(",",".")):t;if(e.count)return/^\s*\d{1,9}\s*$/.test(t)?Number(t):t;let o=t0(e,n);return o&&Oe(t)?`${t.trim()} ${o}`:t}function t0(e,t){return Ot(g(t,e.at))||e.unit||""}var be=(e,t,n)=>t||n?s`<p id="${e}-said" class=${t?"complaint":"hint"}>${t??n}</p>`:d,Bc=!1;addEventListener("pointerdown",()=>Bc=!0,!0);for(let e of["pointerup","pointercancel"])addEventListener(e,()=>Bc=!1,!0);var n0=()=>f({typed:void 0});function ni(e){let{id:t}=e.target,n=()=>{n0(),T$(t)};Bc?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var o0=e=>typeof e=="string"&&e.startsWith("?")?e.slice(1).trim():void 0,i0=({unit:e="",told:t=""},n)=>[e.replace("cm2","cm\xB2"),t,n?"required":""].filter(Boolean).join(", ")||d;function h(e){let t=e.of??"run",n=Y(t,e.at),o=g(t,e.at),i=o0(o),r=a.typed?.key===n,l=r?a.typed.text:o===void 0||i!==void 0?"":String(o),u=i!==void 0||l.trim()===""&&(!e.optional||e.is_due===!0);u&&$t(t,e.at,n,e.label);let c=Ve(t,e.at),p=b=>{let y=b.target.value;f({typed:{key:n,text:y}});let T=e0(e,y);Z(t,T===void 0&&e.takes_part?XR(t,e.at):e.at,T)},_=(r&&typeof o=="string"&&o!==l?`taken as ${o}`:"")||e.hint||i;return s`<div
    class="field ${e.wide?"wide":""} ${e.short?"short":""} ${c?"wants":""}"
  >
    ${Cc(s`<label for=${n} data-said=${i0(e,u)}>${e.label}</label>`,e.term)}
    <input
      id=${n}
      type=${e.date?"date":"text"}
      aria-required=${e.optional&&!e.is_due?d:"true"}
      .value=${P(l)}
      @input=${p}
      @blur=${ni}
      autocomplete="off"
      spellcheck="false"
      inputmode=${e.date?d:e.count?"numeric":e.number?"decimal":"text"}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${[c||_?`${n}-said`:"",e.described_by??""].filter(Boolean).join(" ")||d}
    />
    ${be(n,c,_)} ${e.term?Qt(e.term):d}
  </div>`}var Cc=(e,t)=>t?s`<div class="labelled">${e}${qn(t)}</div>`:e;function tt(e){for(let t=e?.closest("details");t;t=t.parentElement?.closest("details"))t.open=!0;e?.focus()}var L=e=>()=>document.getElementById(e),oe=(e,t)=>L(Y(e,t)),Gt=e=>()=>document.querySelector(`#${e} :is(input, select, button[aria-pressed])`),r0=()=>document.activeElement;function C(e){requestAnimationFrame(()=>tt(e()))}function bt(e,t,n,o=r0){D(t),Ig(e,n),C(o)}function q(e,t,n,o,i){bt(e,t,r=>M(r,n,o),i)}var Lt=(e,t,n)=>`${Y(e,t)}-${n}`;function W(e,t){let n=Fe(e,t);return n?s`<p id=${Y(e,t)} class="complaint" tabindex="-1">${n}</p>`:d}var S$=(e,t,n)=>t.map(([o,i])=>s`<button type="button" aria-pressed=${o===e?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function ce(e,t,n,o){return s`<div class="choice" role="group" aria-label=${e}>${S$(t,n,o)}</div>`}function A({of:e="run",question:t,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:r,answers:l,puts:u,then:c,hint:p,optional:m,term:_}){let b=i?Lt(e,n,t.replaceAll(/\W+/g,"-")):Y(e,o),y=r===void 0&&!m;y&&$t(e,o,b,t);let T=i?void 0:Fe(e,o),V=Ue=>{if(Ue===r)return;let Mo=l.find(([Ix])=>Ix===Ue)[1];q(e,`${t}: ${Mo}`,n,u(Ue),c&&oe(e,c(Ue)))};return s`<div class="field asked ${T?"wants":""}">
    ${Cc(s`<p class="question" id="${b}-label" data-said=${y?"required":d}>${t}</p>`,_)}
    <div
      class="choice"
      role="group"
      id=${b}
      tabindex="-1"
      aria-labelledby="${b}-label"
      aria-describedby=${T||p?`${b}-said`:d}
    >
      ${S$(r,l,V)}
    </div>
    ${be(b,T,p)} ${_?Qt(_):d}
  </div>`}function Wc(e,t,n,o){let i=Y("run",e),r=Fe("run",e),l=()=>q("run",`${t}: ${n?"no":"yes"}`,e,n?void 0:o);return s`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${r?`${i}-said`:d}
        @click=${l}
      >
        ${t}
      </button>
    </div>
    ${be(i,r)}`}function me({label:e,of:t="run",at:n,answers:o,unsaid:i,optional:r,chosen:l,take:u}){let c=Y(t,n),p=Ve(t,n),m=l??O(t,n);!m&&!r&&$t(t,n,c,e);let _=!m||o.some(([T])=>T===m),b=[["",i],..._?[]:[[m,m]],...o];return s`<div class="field choose ${p?"wants":""}">
    <label for=${c} data-said=${m||r?d:"required"}>${e}</label>
    <select
      id=${c}
      aria-required=${r?d:"true"}
      @change=${T=>{let V=T.target.value;u?u(V):Z(t,n,V||!r?V:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${c}-said`:d}
    >
      ${b.filter(([T])=>T||r||!m).map(([T,V])=>s`<option value=${T} .selected=${P(T===m)}>${V}</option>`)}</select
    >${be(c,p)}
  </div>`}function Ui(e,t,n=[]){let o=st(O("run",t),n);return me({label:e,at:t,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function nt({of:e="run",at:t,name:n,title:o,add:i,blank:r,body:l}){let u=Lt(e,t,"part"),c=Lt(e,t,"add"),p=()=>Ft({part:o},l);return g(e,t)===void 0?s`<p class="choice">
      <button type="button" id=${c} @click=${()=>q(e,`${o} added`,t,r,Gt(u))}>
        ${i}
      </button>
    </p>`:s`<div class="part" id=${u} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>q(e,`${o} removed`,t,void 0,L(c))}
      >
        Remove
      </button>
    </div>
    ${W(e,t)} ${p()}
  </div>`}var A$=(e,t)=>`folded ${e} ${t}`,Qe=(e,t)=>ue(A$(e,t));function F({of:e="run",name:t,pointers:n,summary:o,is_needed:i,body:r}){let l=A$(e,t);if(Un())return s`${Ft({fold:l},r)}`;(i||n.some(p=>Ve(e,p)))&&ue(l);let u=a.open.has(l);return s`<details .open=${u}>
    <summary @click=${p=>{p.preventDefault(),je("open",l)}}>${o}</summary>
    ${u?s`<div class="folded">${r()}</div>`:d}
  </details>`}var k=({of:e="run",at:t})=>te(e,t),E=({of:e="run",at:t},n)=>Lt(e,`${t}/${n}`,"item"),pl=({of:e="run",at:t},n,o)=>Lt(e,`${t}/${n}`,o),s0=({of:e="run",at:t})=>Y(e,t);function os(e,t,n,o){let{of:i="run",at:r,stays:l,and:u=c=>c}=e;bt(i,t,c=>u(M(c,r,n.length||l?n:void 0),n.length),o)}function U(e,t,n){let o=k(e);os(e,`${n} added`,[...o,t],Gt(E(e,o.length)))}function a0(e,t,n){let o=k(e).filter((l,u)=>u!==t),i=Math.min(t,o.length-1),r=o.length>(e.least??0);os(e,`${n} removed`,o,r?L(pl(e,i,"drop")):oe(e.of??"run",e.at))}function l0(e,t,n,o){let i=[...k(e)],[r]=i.splice(t,1);i.splice(t+n,0,r);let l=n<0?"earlier":"later",c=t+n===0||t+n===i.length-1?n<0?"later":"earlier":l;os(e,`${o} moved ${l}`,i,L(pl(e,t+n,c)))}function J(e,t,n){let o=k(e).length-1,i=o>=(e.least??0),r=e.in_order&&o>0;if(!i&&!r)return d;let l=(u,c,p)=>s`<button
      type="button"
      id=${pl(e,t,c)}
      ?disabled=${p}
      aria-label="${n} ${c}"
      @click=${()=>l0(e,t,u,n)}
    >
      ${u<0?"\u2191":"\u2193"}
    </button>`;return s`<div class="tools">
    ${r?s`${l(-1,"earlier",t===0)} ${l(1,"later",t===o)}`:d}
    ${i?s`<button
            type="button"
            id=${pl(e,t,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>a0(e,t,n)}
          >
            ×
          </button>`:d}
  </div>`}function ee(e,t,n){let o=s0(e),i=Fe(e.of??"run",e.at);return s`${be(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:d} @click=${n}>
      ${t}
    </button>`}var le=()=>a.beside.studio!==void 0,is=({run:e})=>g("run",e),Ic=({studio:e})=>g("studio",e);function rs(e){return is(e)===void 0&&le()?{of:"studio",at:e.studio}:{of:"run",at:e.run}}var hn=e=>is(e)??Ic(e),He=(e,t)=>h({...t,...rs(e)}),Ec=e=>e===void 0||e===""||e!==null&&typeof e=="object"&&!Object.keys(e).length;function ss(e,t=""){return e===void 0||Ec(e)?[]:e===null||typeof e!="object"||Array.isArray(e)?[[t,e]]:Object.entries(e).flatMap(([n,o])=>ss(o,`${t}/${j(n)}`))}function zn(e,t){for(let n=t;n;n=n.slice(0,n.lastIndexOf("/")))$(e,n)!==void 0&&Ec($(e,n))&&(e=M(e,n,void 0));return e}var zi=(e,t)=>t.reduce((n,o)=>zn(M(n,o,void 0),o),e);function P$(e){let t=new Map;return e.flatMap(n=>ss(is(n)).flatMap(([o,i])=>{let r=n.studio+o,l=t.get(r)??g("studio",r);return Ec(l)||String(l).startsWith("?")||l===i?(t.set(r,i),[[n.run+o,r,i]]):[]}))}async function Nc(e){le()||await Da();let t=P$(e);zt([["studio",n=>t.reduce((o,[,i,r])=>M(o,i,r),n)],["run",n=>zi(n,t.map(([o])=>o))]]),D("Kept in the studio")}function d0(e){let t=e.flatMap(o=>ss(Ic(o)).map(([i,r])=>[o.run+i,r]));zt([["run",o=>t.reduce((i,[r,l])=>$(i,r)===void 0?M(i,r,l):i,o)]]),D("Said in this run only")}function u0(e){let t=e.flatMap(n=>ss(is(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));zt([["run",n=>zi(n,t)]]),D("Taken from the studio again")}var D$=e=>ss(e).length>0;function yo(e,t){if(!le())return d;let n=t.some(r=>D$(is(r))),o=t.some(r=>D$(Ic(r))),i=(r,l)=>s`<button type="button" aria-label="${e}: ${r}" @click=${l}>${r}</button>`;return s`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&P$(t).length?i("Keep in my studio",()=>{Nc(t)}):d}
    ${n&&o?i("As in the studio",()=>u0(t)):d}
    ${!n&&o?i("Otherwise in this run",()=>d0(t)):d}
  </span>`}function jc(e){let t=Object.keys(g("studio","/moulds_owned")??{}),n=a.files?.moulds;return t.find(o=>st(o,n)===st(e,n))??e}var fe=(e,t)=>Object.keys(g(e,t)??{}),O$=(e,t)=>`${Y(e,t)}-name`;function Ki({of:e,at:t,label:n,add:o,blank:i,then:r}){let l=O$(e,t),u=()=>{let c=document.getElementById(l),p=c.value.trim();if(!p)return c.focus();if(c.value="",fe(e,t).includes(p))return tt(r(p)());q(e,`${p} added`,`${t}/${j(p)}`,i,r(p))};return s`<div class="row">
    <div class="field">
      <label for=${l}>${n}</label>
      <input
        id=${l}
        autocomplete="off"
        spellcheck="false"
        @keydown=${c=>{c.key==="Enter"&&u()}}
      />
    </div>
    <button type="button" @click=${u}>${o}</button>
  </div>`}function as({of:e,at:t,name:n,label:o,also:i=l=>l,put:r}){let l=`${Y(e,t)}-${fe(e,t).indexOf(n)}-called`;return qc({id:l,name:n,label:o,taken:fe(e,t),take:u=>{let c=p=>i(ls(p,t,n,u),u);r?r(c,u):bt(e,`${n} is called ${u}`,c)}})}var Hc;function qc({id:e,name:t,label:n,taken:o,take:i,hint:r}){let l=c=>{let p=c.target.value.trim(),m=p!==t&&o.includes(p);Hc=m?{id:e,words:`Another is called ${p} already`}:void 0,f({typed:void 0}),!(!p||m||p===t)&&(i(p),D(`${t} is called ${p}`),C(L(e)))},u=Hc?.id===e?Hc.words:void 0;return s`<div class="field ${u?"wants":""}">
    <label for=${e}>${n}</label>
    <input
      id=${e}
      .value=${P(a.typed?.key===e?a.typed.text:t)}
      @input=${c=>f({typed:{key:e,text:c.target.value}})}
      @change=${l}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${u?"true":"false"}
      aria-describedby=${u||r?`${e}-said`:d}
    />
    ${be(e,u,r)}
  </div>`}function ls(e,t,n,o){let i=Object.entries($(e,t)??{}).map(([r,l])=>[r===n?o:r,l]);return M(e,t,Object.fromEntries(i))}function oi(e,t,n,o=n){let i=r=>zn(M(r,`${t}/${j(n)}`,void 0),t);return s`<div class="tools">
    <button
      type="button"
      aria-label="Remove ${o}"
      @click=${()=>bt(e,`${o} removed`,i,L(O$(e,t)))}
    >
      ×
    </button>
  </div>`}var ii="/pipe/beads",Zt=`${ii}/tip`,c0={of:"run",at:Zt},gn={at:`${ii}/moves`,in_order:!0},Uc="\0own",B$={tip:"",bead_to_opening:"",moves:[]},Yt=(e,t)=>({name:e,label:t,kind:"length"}),F$={name:"count",label:"How many",kind:"count"},M$=Yt("circle_radius","Radius of their circle"),zc={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[Yt("diameter","Diameter"),Yt("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[Yt("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},Yt("start_radius","Radius at the start"),Yt("end_radius","Radius at the end"),Yt("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[Yt("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[F$,M$,Yt("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[F$,M$,Yt("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[Yt("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function C$(e){return s`${m0()} ${Kc()?fl(c0):$0()}
    ${h({label:"Bead \xF7 tip opening",at:`${ii}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${k(gn).map((t,n)=>T0(t,n,e))}</div>
    ${A0()}`}var Kc=()=>typeof g("run",Zt)=="object",Jc=()=>String(g("run",`${ii}/own_tips`)??g("studio","/own_tips")??"");function p0(){let e=Jc(),t=e?bc(e):[];return g("run",`${ii}/own_tips`)===void 0?[...t,...Gr()]:t}function m0(){let e=n=>n===Uc?q("run","a tip of your own",Zt,{name:"",round:{radius:""}},h0):Z("run",Zt,n),t=p0().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return s`${me({label:"Tip",at:Zt,answers:[...t,[Uc,"My own, measured"]],unsaid:"Which tip?",take:e,chosen:Kc()?Uc:void 0})}
  ${Kc()?d:F({name:"tips",pointers:[`${ii}/own_tips`],summary:"Tips of a file of your own",body:()=>h({label:"File of tips",at:`${ii}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var f0=Lt("run",Zt,"own"),h0=Gt(f0);async function g0(){let e=g("run",Zt);if(!await Uu())return;let t=te("own_tips","/tips"),n=_0(String(e.name).trim()||"My tip",t);zt([["own_tips",o=>M(o,`/tips/${t.length}`,{...e,name:n})],["run",o=>M(o,Zt,n)]]),D(`${n} kept in ${a.beside.own_tips.file}`)}function _0(e,t){for(let n=1;;++n){let o=n===1?e:`${e} ${n}`;if(![...t,...Gr()].some(i=>i.name===o))return o}}function $0(){let e=O("run",Zt),t=Jc();if(!e||!t||!bc(t).some(o=>o.name===e))return d;let n=te("own_tips","/tips").findIndex(o=>o.name===e);return n<0?s`<button type="button" @click=${()=>{Uu()}}>Change this tip of my own</button>`:fl({of:"own_tips",at:`/tips/${n}`})}var L$=[["round","Round"],["star","Star"],["outline","Another outline"]],ml={x:"",y:""},b0={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[ml,ml,ml]};function fl({of:e,at:t}){let n=L$.map(([r])=>r),o=n.find(r=>g(e,`${t}/${r}`)!==void 0),i=r=>({...ge(e,t,n),[r]:b0[r]});return s`<div class="part" id=${Lt(e,t,"own")} role="group" aria-label="My own tip">
    ${W(e,t)} ${w0({of:e,at:t})}
    ${A({of:e,question:"Opening of the tip",at:t,is_told_elsewhere:!0,chosen:o,answers:L$,puts:i})}
    ${o?k0({of:e,at:t},o):d}
    ${F({of:e,name:e==="run"?"hand":`hand ${t}`,pointers:[`${t}/hand`,`${t}/note`],summary:"Correction for your hand",body:()=>v0({of:e,at:t})})}
    ${e==="run"?s`<button type="button" @click=${()=>{g0()}}>Keep this tip for all my runs</button>`:s`<p class="hint">It stands in ${a.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var w0=({of:e,at:t})=>e==="run"?h({label:"What you call the tip",at:`${t}/name`}):qc({id:Y(e,`${t}/name`),name:O(e,`${t}/name`),label:"What you call the tip",taken:te("own_tips","/tips").map(({name:n})=>String(n)),take:n=>y0(t,n),hint:"The run that lies open and the studio follow; other runs that name it choose it anew."});function y0(e,t){let n=O("own_tips",`${e}/name`),o="/hand",i=qt(Jc())===a.beside.own_tips?.file,r=i&&g("run",Zt)===n,l=i&&g("studio",`${o}/${j(n)}`)!==void 0;zt([["own_tips",u=>M(u,`${e}/name`,t)],...r?[["run",u=>M(u,Zt,t)]]:[],...l?[["studio",u=>ls(u,o,n,t)]]:[]])}function v0({of:e,at:t}){let n=`${t}/hand`,o=i=>g(e,i)!==void 0;return s`<div class="row">
      ${h({of:e,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?h({of:e,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):d}
    </div>
    ${o(n)?s`<button
            type="button"
            @click=${()=>q(e,"correction removed",n,void 0,Gt(Lt(e,t,"own")))}
          >
            Leave the correction out
          </button>`:d}
    ${h({of:e,label:"Note on the tip",at:`${t}/note`,optional:!0})}`}function k0(e,t){if(t==="outline")return x0(e);let{of:n,at:o}=e,i=(r,l)=>h({of:n,label:l,at:`${o}/${t}/${r}`,unit:"mm",short:!0});return s`<div class="row">
    ${t==="round"?i("radius","Radius of the opening"):s`${h({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function x0({of:e,at:t}){let n={of:e,at:`${t}/outline`};return s`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${k(n).map((o,i)=>s`<div class="row" id=${E(n,i)}>
          ${h({of:e,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${h({of:e,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${J(n,i,`corner ${i+1}`)}
        </div>`)}
    ${ee(n,"One more corner",()=>U(n,ml,"corner"))}`}function T0(e,t,n){let o=zc[String(e.move)],i=`${gn.at}/${t}`,r=`${t+1}. ${o?.words??String(e.move)}`;return s`<div class="part" id=${E(gn,t)} role="group" aria-label=${r}>
    <div class="part-head">
      <p class="part-title">${r}</p>
      ${J(gn,t,r)}
    </div>
    ${W("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(l=>R0(i,l))}
      ${h({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${S0(t,n)}
  </div>`}function R0(e,{name:t,label:n,kind:o,optional:i}){let r=o==="signed"?"\u221212 mm is to the other side.":void 0,l=o==="length"||o==="signed"?"mm":void 0;return h({label:n,at:`${e}/${t}`,unit:l,hint:r,optional:i,short:!0,count:o==="count",number:o==="number"})}function S0(e,t){let n=t?.visible_by?.moves??[],o=n[e];if(!o||n.length!==k(gn).length)return d;let i=o.length_mm>0?`${S(o.length_mm/10,1)} cm of bead`:"";return I({key:`pipe.move.${e}`,label:"Lays down",note:i,shown:ke(a.units,o.volume_ml),of:`pipe.visible_by.moves.${e}.volume_ml`})}function A0(){let e=o=>({move:o,...Object.fromEntries(zc[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),t=Y("run",gn.at),n=Fe("run",gn.at);return k(gn).length||$t("run",gn.at,t,"What the tip does"),s`${be(t,n)}
    <div
      class="choice words"
      role="group"
      id=${t}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${t}-said`:d}
    >
      ${Object.entries(zc).map(([o,{words:i,does:r}])=>s`<button type="button" @click=${()=>U(gn,e(o),i)}>
            <b>+ ${i}</b> <small>${r}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}function _n(e,t=()=>{}){if(!e.theirs)return d;let n=Ko(e),o=`conflict-${e.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{tg(e),t()};return s`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${e.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${e.failed?s`<p class="complaint" role="status">Not loaded: ${e.failed}.</p>`:d}
    <div class="choice">
      ${n?s`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>ng(e)}>Leave it deleted</button>`:s`<button type="button" @click=${()=>eg(e)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function $n(e){if(e.theirs||!e.set_aside||Si(e)&&!e.is_taken)return d;let t=()=>{Si(e)&&Go(),og(e)};return s`<section class="banner quiet" aria-label="${e.file} was changed">
    <p>
      ${e.file} was changed outside this page, and stands here as it is
      now.${e.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${t}>Change to the other text</button>
      ${e.is_taken?s`<button type="button" @click=${()=>Zh(e)}>Close</button>`:d}
    </div>
  </section>`}var hl={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function I$(e,t){let n=Vr(e);if(!Array.isArray(n)||!n.some(u=>u.id===t))return d;let i=te("own_fats","/fats").findIndex(u=>u.id===t);if(!(i>=0&&a.beside.own_fats!==void 0))return s`<button type="button" @click=${()=>{D0(e,t)}}>Change this fat of my own</button>`;let l=`/fats/${i}`;return F({of:"own_fats",name:t,pointers:[l],summary:`My own fat, in ${a.beside.own_fats.file}`,body:()=>Ft({part:O("own_fats",`${l}/name`)||"Your own fat"},()=>Vc(l))})}async function D0(e,t){await Pa(e),Qe("own_fats",t);let n=te("own_fats","/fats").findIndex(o=>o.id===t);C(L(`f-own_fats-fats-${n}-name`))}var P0=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function Vc(e){let t=(n,o,i,r=!1)=>h({of:"own_fats",label:o,at:`${e}/${n}`,hint:i,optional:r});return s`${W("own_fats",e)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${t("name","Name of the fat")} ${t("source","The document","Supplier, name, date.")}
      ${t("lot","Lot",void 0,!0)}
    </div>
    ${A({of:"own_fats",question:"What it is",at:`${e}/kind`,chosen:O("own_fats",`${e}/kind`)||void 0,answers:P0,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${O0(`${e}/saponification_value`)}
    <div class="row">
      ${t("inci","INCI name")}
      ${t("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${t("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${F({of:"own_fats",name:`${e} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${e}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>F0(e)})}`}function O0(e){let t=g("own_fats",e),n=t!==null&&typeof t=="object"?"range":"one",o=(i,r,l=!1)=>h({of:"own_fats",label:r,at:i,number:!0,short:!0,optional:l,unit:"mg KOH/g"});return s`${A({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:e,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(e,"Saponification value"):s`${o(`${e}/low`,"Lowest")} ${o(`${e}/typical`,"Typical",!0)}
            ${o(`${e}/high`,"Highest")}`}
    </div>`}function F0(e){let t=(o,i,r,l)=>{let u=`${e}/${o}`,c=g("own_fats",u)!==void 0,p=()=>q("own_fats",`${i}: ${c?"left out":"added"}`,u,c?void 0:r);return s`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${c?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${c?"Leave out":"Add"}
        </button>
      </div>
      ${c?s`${W("own_fats",u)}${l()}`:d}
    </div>`},n=(o,i,r,l=!1)=>h({of:"own_fats",label:i,at:`${e}/${o}`,unit:r,number:l,short:!0});return s`<div class="items">
      ${t("iodine_value","Iodine value",{low:"",high:""},()=>typeof g("own_fats",`${e}/iodine_value`)=="object"?s`<div class="row">
              ${n("iodine_value/low","Lowest iodine value","g/100 g",!0)}
              ${n("iodine_value/high","Highest iodine value","g/100 g",!0)}
            </div>`:n("iodine_value","Iodine value","g/100 g",!0))}
      ${t("density","Density when molten",{at:"",low:"",high:""},()=>s`<div class="row">
            ${n("density/at","Measured at","\xB0C")} ${n("density/low","Lowest density","g/ml")}
            ${n("density/high","Highest density","g/ml")}
          </div>`)}
      ${t("melting_range","Melting range",{low:"",high:""},()=>s`<div class="row">
            ${n("melting_range/low","Melts from","\xB0C")} ${n("melting_range/high","Melts up to","\xB0C")}
          </div>`)}
    </div>
    ${M0(`${e}/fatty_acids`)}
    <div class="row">
      ${h({of:"own_fats",label:"Unsaponifiable, at most",at:`${e}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${h({of:"own_fats",label:"Note on the fat",at:`${e}/note`,optional:!0})}
    </div>`}var W$=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function M0(e){let t=Object.keys(g("own_fats",e)??{}),n=W$.filter(([l])=>!t.includes(l)),o=l=>W$.find(([u])=>u===l)?.[1]??l,i=l=>`${e}/${j(l)}`,r=l=>{let u=Array.isArray(g("own_fats",i(l))),c=(p,m)=>h({of:"own_fats",label:`${o(l)}, ${m}`,at:`${i(l)}/${p}`,unit:"%",short:!0});return s`<div class="row">
      ${u?s`${c(0,"lowest")} ${c(1,"highest")}`:h({of:"own_fats",label:o(l),at:i(l),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(l)}"
        @click=${()=>q("own_fats",`${o(l)} removed`,t.length>1?i(l):e,void 0)}
      >
        ×
      </button>
    </div>`};return s`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${W("own_fats",e)} ${t.map(r)}
    <div class="row">
      ${me({label:"Add a fatty acid",of:"own_fats",at:`${e}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:l=>l&&q("own_fats",`${o(l)} added`,i(l),["",""])})}
    </div>`}function Ji(e){let{pieces:t,batches:n,batch_limits:o,around:i,...r}=e,[l]=n,{pour:u,pipe:c,dust:p,lye_pot:m,bottles:_}=l;return{...r,pour:u,pipe:c,dust:p,lye_pot:m,bottles:_,batch:l,place:"batches.0",whippings:c?.whippings??[],whole:e}}var z=(e,t,n=`${t}s`)=>`${e} ${e===1?t:n}`,L0=e=>e.cut?["loaf","loaves"]:["cast","casts"];function Xt(e,{pieces:t,casts:n}){let o=e.cut?z(t,"bar"):z(t,"piece");return n===t?o:`${o} from ${z(n,...L0(e))}`}var B0=e=>e===1?"once":`${e} times`,Qc=e=>e.batches.length>1,Ge=e=>e.pieces.batches>1;function we(e){return Ge(e.whole)?`one batch, ${Xt(e.whole,e.batch)}`:""}var E$=({whippings:e})=>e.length>1||(e[0]?.count??0)>1;function Gc(e,t){return E$(e)?`${Xt(e.whole,t)}${t.count>1?`, whipped ${B0(t.count)}`:""}`:""}function gl(e,t){let n=Gc(e,t);return n&&`one whipping: ${n}`}var N$=e=>Ge(e.whole)||E$(e),_l=(e,t)=>`${z(e,"filling")} of ${z(t,"cavity","cavities")}`;var j$=e=>[...a.files?.runs??[],...a.files?.orders??[],...a.files?.formulas??[]].find(t=>t.file===e)?.name||e;function $l(e){let t=e?.used_by??[];return t.length?s`<p class="aside">Used by ${Ee(t.map(j$))}.</p>`:d}function Vi(e){let t=e?.used_by??[];return t.length<2?d:s`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${Ee(t.map(j$))}: a change here changes
    ${t.length===2?"both":`all ${t.length}`}.
  </p>`}var ds={of:"own_fats",at:"/fats",least:1},bl={of:"own_tips",at:"/tips",least:1},ri=({of:e,at:t})=>te(e,t);function H$(e){return U$(e,ds,"fats",t=>{let n=`/fats/${t}`;return F({of:"own_fats",name:String(ri(ds)[t].id),pointers:[n],summary:s`<span
        >${O("own_fats",`${n}/name`)||"Without a name"}<small
          >${C0(`${n}/saponification_value`)}</small
        ></span
      >`,body:()=>Vc(n)})})}function C0(e){let t=g("own_fats",e),n=t!==null&&typeof t=="object"&&!Array.isArray(t)?t:void 0,o=n?[n.low,n.high].filter(i=>i!=="").join(" to "):String(t??"");return o?`${o} mg KOH/g`:"saponification value not given"}function q$(e){return U$(e,bl,"tips",t=>{let n=`/tips/${t}`;return s`<div class="tip-row">
      ${w$(ri(bl)[t])}
      ${F({of:"own_tips",name:`tip ${t}`,pointers:[n],summary:O("own_tips",`${n}/name`)||"Without a name",body:()=>fl({of:"own_tips",at:n})})}
    </div>`})}function U$(e,t,n,o){let i=a.files?.[n].find(({file:l})=>l===e.file),r=l=>String(ri(t)[l].name||`number ${l+1}`);return s`${_n(e)} ${$n(e)}
    <section class="card" aria-labelledby="held-title">
      <h2 id="held-title" tabindex="-1">In ${e.file}</h2>
      ${Vi(i)}
      ${e.shipped?s`<p class="aside">Built-in: your first change is saved as a copy.</p>`:d}
      <div class="items">
        ${ri(t).map((l,u)=>s`<div class="held" id=${E(t,u)} role="group" aria-label=${r(u)}>
              ${o(u)} ${J(t,u,r(u))}
            </div>`)}
      </div>
    </section>`}var Yc=(e,t)=>({...hl,id:al(e,t),name:e});function z$(e){let t=Yc(e,[...a.fats,...ri(ds)]);U(ds,t,e),Qe("own_fats",String(t.id)),C(oe("own_fats",`/fats/${ri(ds).length-1}/source`))}var Zc=e=>({name:e});function K$(e){U(bl,Zc(e),e);let t=ri(bl).length-1;Qe("own_tips",`tip ${t}`),C(Gt(Lt("own_tips",`/tips/${t}`,"own")))}var J$=(e,t,n)=>{let o=new Map;for(let i=t;i<=n;i++)o.set(e[i],i);return o},wl=il(class extends Ni{constructor(e){if(super(e),e.type!==jn.CHILD)throw Error("repeat() can only be used in text expressions")}dt(e,t,n){let o;n===void 0?n=t:t!==void 0&&(o=t);let i=[],r=[],l=0;for(let u of e)i[l]=o?o(u,l):l,r[l]=n(u,l),l++;return{values:r,keys:i}}render(e,t,n){return this.dt(e,t,n).values}update(e,[t,n,o]){let i=l$(e),{values:r,keys:l}=this.dt(t,n,o);if(!Array.isArray(i))return this.ut=l,r;let u=this.ut??=[],c=[],p,m,_=0,b=i.length-1,y=0,T=r.length-1;for(;_<=b&&y<=T;)if(i[_]===null)_++;else if(i[b]===null)b--;else if(u[_]===l[y])c[y]=$o(i[_],r[y]),_++,y++;else if(u[b]===l[T])c[T]=$o(i[b],r[T]),b--,T--;else if(u[_]===l[T])c[T]=$o(i[_],r[T]),ji(e,c[T+1],i[_]),_++,T--;else if(u[b]===l[y])c[y]=$o(i[b],r[y]),ji(e,i[_],i[b]),b--,y++;else if(p===void 0&&(p=J$(l,y,T),m=J$(u,_,b)),p.has(u[_]))if(p.has(u[b])){let V=m.get(l[y]),Ue=V!==void 0?i[V]:null;if(Ue===null){let Mo=ji(e,i[_]);$o(Mo,r[y]),c[y]=Mo}else c[y]=$o(Ue,r[y]),ji(e,i[_],Ue),i[V]=null;y++}else sl(i[b]),b--;else sl(i[_]),_++;for(;y<=T;){let V=ji(e,c[T+1]);$o(V,r[y]),c[y++]=V}for(;_<=b;){let V=i[_++];V!==null&&sl(V)}return this.ut=l,rl(e,c),Ke}});async function pe(e){f({list_complaint:""});try{await e()}catch(t){f({list_complaint:t instanceof Error?t.message:String(t)}),t instanceof w&&await Dt().catch(()=>{})}}var Xc=()=>{pe(qg)},V$=()=>{pe(Ug)};function Bt(e){return s`<h1 tabindex="-1">${e}</h1>
    ${a.list_complaint?s`<p class="alarm" role="alert">${a.list_complaint}</p>`:d}
    ${a.list_told&&Nr()?s`<p class="told" role="status">
            ${a.list_told} <button type="button" @click=${Xc}>Undo</button>
          </p>`:d}
    ${(a.files?.cut??[]).map(t=>s`<p class="alarm">
          More lies in ${t.folder} than is looked at: ${t.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var Q$=new Map,G$=Promise.resolve();function Y$(e,t=""){let n=`${e}
${t}`,o=Q$.get(n);return o||(o=G$.then(()=>W0(e)),G$=o,Q$.set(n,o)),o}async function W0(e){try{let t=await sn({kind:"glb",gauge:{file:e}}),n=Oi(await t.arrayBuffer());return Hr(n.find(o=>o.name==="cavity")??n[0])}catch(t){if(t instanceof w)return;throw t}}var ep=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#e=new IntersectionObserver(([t])=>t.isIntersecting&&this.#t(),{rootMargin:"200px"});connectedCallback(){this.#e.observe(this)}disconnectedCallback(){this.#e.disconnect()}attributeChangedCallback(){this.#e.disconnect(),this.isConnected&&this.#e.observe(this)}#t(){this.#e.disconnect();let t=this.getAttribute("file")??"";requestIdleCallback(()=>{Y$(t,this.getAttribute("changed")??"").then(n=>{t===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let t=this.#n;if(!t)return void Rt(d,this);let{left:n,right:o,floor:i,brim:r,loops:l}=t,u=.04*Math.max(o-n,r-i),c=[n-u,-r-u,o-n+2*u,r-i+2*u];Rt(s`<svg viewBox=${c.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${jr(l)} />
      </svg>`,this)}};customElements.define("mould-picture",ep);var en=(e,t)=>s`<ul class="cards">
    ${wl(e,({file:n})=>n,t)}
  </ul>`;function bn(e){let{one:t,facts:n,picture:o,open:i}=e,r=a.list_open?.file===t.file?a.list_open:void 0,l=t.name||t.file;return s`<li class="file">
    <button type="button" class="open" @click=${()=>{pe(i)}}>
      ${o?s`<mould-picture file=${o}></mould-picture>`:d}
      <span class="told-of"
        ><b>${l}</b>${n.length?s`<span>${n.join(", ")}</span>`:d}
        <span class="file-name">${t.shipped?"built-in":t.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${r?"true":"false"}
      aria-label="Name, note, copy or remove: ${l}"
      @click=${()=>I0(e,!r)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${r?E0(e,r):d}
  </li>`}function I0({one:e},t){let{file:n,name:o,note:i}=e;f({list_open:t?{file:n,name:o,note:i,stem:Zo(n)}:void 0})}function E0(e,t){let{kind:n,one:o}=e,i=s`<button type="button" @click=${()=>{pe(()=>j0(n,o))}}>Copy</button>`;if(o.shipped)return s`<div class="acts"><div class="choice">${i}</div></div>`;let r=["name","note"].every(c=>o[c]===t[c])&&Zo(o.file)===t.stem,l=n.name==="fats"||n.name==="tips"||t.name.trim()!=="",u=()=>{pe(()=>H0(e,t))};return s`<div class="acts">
    ${$l(o)} ${n.called?tp(n.called==="for"?"For":"Name",t,"name"):d}
    ${n.name==="tips"?d:tp("Note",t,"note")} ${tp("Name of the file",t,"stem")}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${r||!l||!t.stem.trim()} @click=${u}>
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{pe(()=>X$(o,t,!1))}}>Remove</button>
    </div>
    ${t.used_by?N0(o,t):d}
  </div>`}function tp(e,t,n){let o=`list-${n}`,i=r=>v(t,{[n]:r.target.value});return s`<div class="field">
    <label for=${o}>${e}</label>
    <input id=${o} .value=${P(t[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function N0(e,t){return s`<div role="alert">
    <p class="alarm">${t.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{pe(()=>X$(e,t,!0))}}>Remove it even so</button>
  </div>`}async function j0(e,t){let n=await zg(e,t),o=a.files?.[e.list].find(i=>i.file===n);o&&(f({list_open:{file:n,name:o.name,note:o.note,stem:Zo(n)}}),requestAnimationFrame(()=>document.querySelector("#list-name, #list-stem")?.select()))}async function H0({kind:e,one:t},n){let{name:o,note:i,stem:r}=n;await Jg(e,t,{name:o.trim(),note:i.trim(),stem:r.trim()}),Z$(n)}function Z$(e){a.list_open===e&&f({list_open:void 0})}async function X$(e,t,n){let o=e.used_by??[];if(o.length&&!n)return v(t,{used_by:o});try{await Vg(e,n),Z$(t)}catch(i){let r=i instanceof w?i.answer.used_by:void 0;if(!r)throw i;v(t,{used_by:r})}}function yl(e,t,n){let o=[...a.files?.[e.list]??[]].sort((r,l)=>Number(r.shipped)-Number(l.shipped));return o.length?en(o,r=>bn({kind:e,one:r,facts:q0(r),open:()=>n(r.file)})):s`<p class="aside">None yet. ${t}</p>`}var eb=4;function q0({holds:e=[],changed:t}){let n=e.length-eb,o=n>0?[...e.slice(0,eb),`${n} more`]:e;return[o.length?Ee(o):"",t?`changed ${N(t)}`:""].filter(Boolean)}var us="";function vl({label:e,add:t,act:n,tried:o}){let i=()=>{o(async()=>{await n(us.trim()),us="",Q()})},r=l=>{us=l.target.value,Q()};return s`<div class="row">
    <div class="field">
      <label for="new-held">${e}, by name</label>
      <input id="new-held" .value=${P(us)} @input=${r} autocomplete="off" spellcheck="false" />
    </div>
    <button type="button" ?disabled=${!us.trim()} @click=${i}>${t}</button>
  </div>`}function Ct(e){let t=a.removed.filter(n=>n.kind===e);return t.length?s`<details class="removed">
    <summary>Removed, and kept still: ${t.length}</summary>
    <p class="hint">
      What is removed is kept for two years, and comes back from here. Later it is deleted when something else is
      removed.
    </p>
    <ul class="limits">
      ${t.map(U0)}
    </ul>
  </details>`:d}function U0(e){let t=e.name||e.file,n=`removed ${e.removed}`,o=a.open.has(n);return s`<li>
    <p>
      <b>${t}</b> <small>${e.file}, removed ${N(e.removed_at)}, kept until ${N(e.kept_until)}</small>
    </p>
    <div class="choice">
      <button type="button" aria-label="Bring back ${t}" @click=${()=>{pe(()=>Qg(e))}}>
        Bring back
      </button>
      ${o?s`<button
                type="button"
                aria-label="Delete ${t} for good"
                @click=${()=>{pe(()=>Gg(e))}}
              >
                Delete it for good
              </button>
              <button type="button" @click=${()=>je("open",n)}>Keep it</button>`:s`<button type="button" aria-label="Delete ${t} ..." @click=${()=>je("open",n)}>
              Delete ...
            </button>`}
    </div>
  </li>`}function nb(){let e=uo();return s`${Bt("Fats")}
    <section aria-labelledby="own-fats">
      <h2 id="own-fats">Your own fats</h2>
      ${yl(an,"Each file is named by the formulas that use its fats.",t=>Er(an,t))}
      ${e?H$(e):d}
      ${vl({label:"A new fat of your own",add:e?`Add it to ${e.file}`:"Begin a file with it",act:t=>e?Promise.resolve(z$(t)):Oa(an,Yc(t,a.fats)),tried:pe})}
    </section>
    ${z0()} ${Ct("fats")}`}var tb="fats that are listed";function z0(){let e=a.finding?.key===tb?a.finding.text:"",t=a.fats.filter(n=>Hn(n,e)!==void 0);return s`<section aria-labelledby="built-in-fats">
    <h2 id="built-in-fats">Built-in fats</h2>
    <div class="row">
      <div class="field">
        <label for="find-fat">Find by any name</label>
        <input
          id="find-fat"
          .value=${P(e)}
          @input=${n=>f({finding:{key:tb,text:n.target.value}})}
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
          ${t.map(n=>K0(n,e))}
        </tbody>
      </table>
    </div>
    ${t.length?d:s`<p class="hint">None is called so.</p>`}
  </section>`}function K0(e,t){let{low:n,high:o,typical:i}=e.saponification_value_mg_koh_per_g,r=Hn(e,t),l=u=>S(u,1);return s`<tr>
    <th scope="row">${e.name}${r&&r!==e.name?s` <small>${r}</small>`:d}</th>
    <td>${l(i)} <small>${l(n)} to ${l(o)}</small></td>
    <td>${e.inci}</td>
  </tr>`}var ob=e=>e.goes_into==="lye",ib=({role:e})=>e==="alkali",J0=e=>ib(e)?"down":"nearest",si=(e,t)=>X(e,t,J0(t));function kl(e){let t=e.ingredients.map((i,r)=>({one:i,i:r})).filter(({one:i})=>ob(i)),n=({one:i})=>i.role==="water",o=({one:i})=>ib(i);return[...t.filter(n),...t.filter(i=>!n(i)&&!o(i)),...t.filter(o)]}function rb(e){return e.ingredients.map((t,n)=>({one:t,i:n})).filter(({one:t})=>!ob(t))}function np(e){let t=O(e,"/measured_density");return s`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${h({label:"Temperature at the pour",of:e,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F.",term:"batter"})}
      ${h({label:"Cure",of:e,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days.",term:"cure"})}
    </div>
    <div class="row">
      ${h({label:"Unmould after",of:e,at:"/unmould_after",unit:"h",optional:!0,hint:"From the pour on, whatever the mould's own hours are: 18 h."})}
      ${h({label:"Cut within",of:e,at:"/cut_within",unit:"h",optional:!0,hint:"From the pour on: 48 h. A salt bar is cut the day it is poured: 5 h."})}
    </div>
    ${Y0(e)}
    ${F({of:e,name:"density",pointers:["/measured_density"],summary:`Measured density${t&&`: ${t}`}`,body:()=>h({label:"Of the plain, unwhipped batter, by weigh-cup",of:e,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var V0=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],sb={after:"",mass:""},ab=3,Q0={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:ab},()=>sb)}}};function G0(e){return g(e,"/drying/weighings")!==void 0?"weighed":g(e,"/drying")!==void 0?"law":g(e,"/water_lost_in_cure")===void 0?"unsaid":"share"}function Y0(e){let t=G0(e);return s`${A({of:e,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:t,answers:V0,puts:o=>({...ge(e,"",["drying","water_lost_in_cure"]),...Q0[o]})})}
  ${t==="share"?s`<div class="row">
          ${h({label:"Of the batter's water, gone when it is sold",of:e,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:d}
  ${t==="law"?s`<div class="row">
          ${h({label:"Of the batter's water, gone in the end",of:e,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${h({label:"After this, 63 % of that is gone",of:e,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:d}
  ${t==="weighed"?Z0(e):d}`}function Z0(e){let t={of:e,at:"/drying/weighings",least:ab};return s`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${k(t).map((n,o)=>s`<div class="row named" id=${E(t,o)}>
          ${h({label:"Time since the pour",of:e,at:`${t.at}/${o}/after`,unit:"days",short:!0})}
          ${h({label:"Mass",of:e,at:`${t.at}/${o}/mass`,unit:"g",short:!0})}
          ${J(t,o,`weighing ${o+1}`)}
        </div>`)}
    ${ee(t,"One more weighing",()=>U(t,sb,"weighing"))}`}var X0=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],xl=e=>go(e).map(t=>[t.id,t.name]),lb=["unsaid","Not given"],db=["none","Holds none"],ub=e=>e===void 0?"unsaid":e==="none"?"none":"some",eS=e=>t=>t==="some"?e:t==="none"?"none":void 0;function cb(e,t){return op(e,`${t}/contains_fat`,[lb,db,["some","Holds fat"]],xl(e))}function op(e,t,n,o){let i=ub(g(e,t)),r=n.some(([l])=>l===i)?i:void 0;return s`${A({of:e,question:"Fat in it",at:t,chosen:r,answers:n,puts:eS({fat:"",share:""})})}
  ${i==="some"?s`<div class="row">
          ${me({label:"Which fat",of:e,at:`${t}/fat`,answers:o,unsaid:"choose ..."})}
          ${h({label:"Fat in what is weighed",of:e,at:`${t}/share`,unit:"%",short:!0})}
        </div>`:d}`}var tS=[lb,db,["some","Holds acid"],["typed","By what it takes up"]],nS={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function ip(e,t){let n=`${t}/contains_acid`,o=g(e,`${n}/takes_up`)!==void 0?"typed":ub(g(e,n));return s`${A({of:e,question:"Acid in it",at:n,chosen:o,answers:tS,puts:i=>nS[i]})}
  ${o==="some"?s`<div class="row">
          ${me({label:"Which acid",of:e,at:`${n}/acid`,answers:X0.map(i=>[i,i]),unsaid:"choose ..."})}
          ${h({label:"Of that acid in what is weighed",of:e,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:d}
  ${o==="typed"?s`<div class="row">
          ${h({label:"Taken up by 1 g of it",of:e,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:d}
  ${o==="some"||o==="typed"?rp(e,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):d}`}function rp(e,t,n){let o=g(e,t)===!0?"yes":"no";return A({of:e,question:n,at:t,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var oS=["tsp/lb","tbsp/lb","tsp/kg"],Tl=["%","g/kg",...oS].flatMap(e=>[`${e} of fats`,`${e} of batter`]),mb=[...Tl,"% of finished soap","g/kg of finished soap"];function pb(e,t){let n=e.trim().replaceAll(/\s+/g," "),o=[...t].sort((i,r)=>r.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():e,o]}function Rl(e,t,n,o,i=!1){let r=Y(e,t),[l,u]=pb(O(e,t),o),c=a.typed?.key===r?a.typed.text:l;!i&&!(l.trim()&&u)&&$t(e,t,r,l.trim()?`${n}: of what`:n);let m=Ve(e,t),_=(y,T)=>{let V=`${y.trim()} ${T}`.trim();Z(e,t,i&&!y.trim()?void 0:V),Q()},b=y=>{let T=y.target.value,[V,Ue]=pb(T,o);f({typed:{key:r,text:T}}),_(V,Ue||u)};return s`<div class="field rate ${m?"wants":""}">
    <label for=${r}>${n}</label>
    <div class="rate-of">
      <input
        id=${r}
        .value=${P(c)}
        @input=${b}
        @blur=${ni}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${r}-said`:d}
      />
      <select
        aria-label="${n}: of what"
        @change=${y=>_(c,y.target.value)}
      >
        <option value="" .selected=${P(u==="")}>of what?</option>
        ${o.map(y=>s`<option value=${y} .selected=${P(y===u)}>${y}</option>`)}
      </select>
    </div>
    ${be(r,m)}
  </div>`}function iS(e){let t=e.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=t.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,r)=>i+r,0);return{sum:Math.round(o*1e6)/1e6,unread:t.length-n.length}}var rS=.01+1e-9;function Qi(e,t){let{sum:n,unread:o}=iS(t),i=l=>`${String(Math.round(l*1e6)/1e6)} %`;if(o===t.length)return`${e} have no share yet.`;if(o)return`${e} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let r=100-n;return Math.abs(r)<=rS?`${e} add to ${i(n)}.`:r>0?`${e} add to ${i(n)}: ${i(r)} ${r===1?"is":"are"} missing.`:`${e} add to ${i(n)}: ${i(-r)} too much.`}var hb=(e,t)=>go(e).find(n=>n.id===t)?.name??t,cs=e=>({of:e,at:"/fats",in_order:!0,stays:!0}),ps=e=>k(cs(e));function ap(e){let t=ps(e),n=a.picking?.of===e&&a.picking.row===t.length;return s`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${t.map((o,i)=>sS(e,i,t))}
    </ol>
    <p class="total" role="status">
      ${t.length?Qi("The fats",t.map(o=>o.share)):"No fat yet."}
    </p>
    ${t.length?d:$t(e,"/fats",Y(e,"/fats"),"The fats")}
    ${n?$b(e):ee(cs(e),"Add a fat",()=>gb(e,t.length))} ${fS(e)}
  </section>`}function sS(e,t,n){let o=`/fats/${t}`,i=hb(e,String(n[t].fat??""))||"Which fat?",r=Fe(e,`${o}/fat`)??Fe(e,o),l=a.picking?.of===e&&a.picking.row===t;return s`<li class="formula-row" id=${E(cs(e),t)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${Y(e,`${o}/fat`)}
        aria-expanded=${l?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>l?sp():gb(e,t)}
      >
        ${i}
      </button>
      ${h({label:"Share",of:e,at:`${o}/share`,unit:"%",short:!0})} ${J(cs(e),t,i)}
    </div>
    ${r?s`<p class="complaint">${r}</p>`:d} ${l?$b(e):d}
    ${I$(e,String(n[t].fat??""))}
    ${F({of:e,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${dS(n[t])}`,body:()=>pS(e,t)})}
  </li>`}function gb(e,t){f({picking:{of:e,row:t,text:""}}),C(L("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function sp(){let e=a.picking;f({picking:void 0}),e&&C(oe(e.of,e.row<ps(e.of).length?`/fats/${e.row}/fat`:"/fats"))}function lp(e,t){let{row:n}=a.picking,o=ps(e);f({picking:void 0});let i=o[n]?{fat:t,share:o[n].share??""}:{fat:t,share:""};os(cs(e),`${hb(e,t)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],oe(e,`/fats/${n}/share`))}function _b(e){let{row:t,text:n,lit:o}=a.picking,i=ps(e).map(u=>u.fat),r=aS(e,n),l=r.filter(u=>!i.includes(u.id)||i[t]===u.id);return{found:r,free:l,lit:l.find(u=>u.id===o)}}function fb(e){let t=a.picking;if(!a.fats.length)return f({picking:{...t,is_entered:!0}});let{free:n,lit:o}=_b(e),i=n.find(l=>et(l.name)===et(t.text.trim())),r=o??(n.length===1?n[0]:i);r?lp(e,r.id):t.is_entered&&f({picking:{...t,is_entered:!1}})}function $b(e){let{row:t,text:n}=a.picking,o=ps(e).map(m=>m.fat),{found:i,free:r,lit:l}=_b(e),u=m=>{f({picking:{of:e,row:t,text:m.target.value}})},c=m=>{let _=l?r.indexOf(l)+m:m>0?0:r.length-1,b=r[(_+r.length)%r.length];b&&(f({picking:{of:e,row:t,text:n,lit:b.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${b.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&sp(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),c(m.key==="ArrowDown"?1:-1)),m.key==="Enter"&&fb(e)};return a.picking.is_entered&&a.fats.length&&queueMicrotask(()=>a.picking?.is_entered&&fb(e)),s`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input
          id="find-fat"
          role="combobox"
          aria-expanded="true"
          aria-controls="fats-found"
          aria-activedescendant=${l?`fat-${l.id}`:d}
          .value=${n}
          @input=${u}
          @keydown=${p}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" @click=${sp}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${a.fats.length?i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name.":`The list of fats is on its way ...${a.picking.is_entered?" Then what you typed is taken.":""}`}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let _=o.includes(m.id)&&o[t]!==m.id,b=Hn(m,n);return s`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===l?"lit":""}
          ?disabled=${_}
          aria-selected=${m===l||o[t]===m.id?"true":"false"}
          @click=${()=>lp(e,m.id)}
        >
          ${m.name}${b===m.name||!b?"":`, ${b}`}${_?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{lS(e,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function aS(e,t){let n=go(e).filter(l=>Hn(l,t)!==void 0),o=t.split(/\s+/).filter(l=>l.length>2);if(n.length||o.length<2)return n;let i=l=>o.filter(u=>Hn(l,u)!==void 0).length,r=Math.max(...go(e).map(i));return r?go(e).filter(l=>i(l)===r):[]}async function lS(e,t){if(!await Pa(e))return;let o=t.trim(),i=al(o,[...a.fats,...te("own_fats","/fats")]),r=te("own_fats","/fats").length;Z("own_fats",`/fats/${r}`,{...hl,id:i,name:o}),lp(e,i),Qe("own_fats",i),C(oe("own_fats",`/fats/${r}/${o?"inci":"name"}`))}function dS(e){let t=e.saponification_value,n=t,i=t===""||t!==null&&typeof t=="object"&&n.low===""?"to be filled in":t===void 0?"published values":t!==null&&typeof t=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(t)} mg KOH per g`;return`: ${e.lot?`${String(e.lot)}, `:""}${i}`}var uS=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],cS={published:void 0,one:"",range:{low:"",typical:"",high:""}};function pS(e,t){let n=`/fats/${t}/saponification_value`,o=g(e,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",r=g(e,`/fats/${t}/confirmed`)!==void 0,l=(u,c)=>h({label:u,of:e,at:c,number:!0,short:!0});return s` ${h({label:"Lot",of:e,at:`/fats/${t}/lot`,optional:!0,short:!0})}
  ${A({of:e,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:uS,puts:u=>cS[u],hint:mS(e,O(e,`/fats/${t}/fat`))})}
  ${i==="one"?s`<div class="row">${l("Saponification value",n)}</div>`:d}
  ${i==="range"?s`<div class="row">
          ${l("Lowest",`${n}/low`)} ${l("Typical",`${n}/typical`)} ${l("Highest",`${n}/high`)}
        </div>`:d}
  ${i!=="published"||r?rp(e,`/fats/${t}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):d}`}function mS(e,t){let n=go(e).find(l=>l.id===t);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:r}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${r}).`}function fS(e){let t=Vr(e),n=Array.isArray(t)?`In it: ${t.map(i=>i.name).join(", ")}.`:t==="none"?"No such file is found from here.":void 0,o=O(e,"/own_fats");return F({of:e,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>h({label:"Its name, as it lies beside this formula",of:e,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var hS=e=>he.includes(e);function Sl(){let e=a.complaint;return!e?.field||e.lye_heavy?!1:qi().some(({of:t,at:n})=>Mt(t)&&(n===e.field||n.startsWith(`${e.field}/`)))}function ms(){let e=a.complaint?qi():[];return e.length?s`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${e.length}</p>
    <ul class="choice">
      ${e.map(t=>s`<li>
            <button type="button" @click=${()=>gS(t)}>
              ${t.part?s`<small>${t.part}</small> `:d}${t.label}
            </button>
          </li>`)}
    </ul>
  </div>`:d}function gS({of:e,id:t,folds:n}){for(let o of n)ue(o);f({has_asked:!0}),hS(e)?(a.view!=="formula"||a.formula_of!==e)&&at(e):a.view!=="set-up"&&!(e==="own_fats"&&a.view==="formula")&&f({view:"set-up"}),requestAnimationFrame(()=>C(L(t)))}var bb="danger-of-superfat";function dp(e,t){return s`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${h({label:"Superfat (share of all fat left unsaponified)",of:e,at:"/superfat",unit:"%",term:"superfat",described_by:_o(e).length?bb:void 0})}
    </div>
    ${Xr(e,bb)} ${_S(e)} ${kS(e,t)}
  </section>`}function _S(e){let t=te(e,"/alkali"),n=t.length>1?"both":t[0]?.alkali;return s`${A({of:e,question:"Alkali",term:"alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>$S(t,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${t.map((i,r)=>bS(e,i,r,t.length>1))}
  ${t.length>1?s`<p class="total" role="status">
          ${Qi("The two",t.map(i=>i.share))}
        </p>`:d}`}function $S(e,t){let n=(o,i)=>({purity:"",...e.find(r=>r.alkali===o),alkali:o,share:i});return t==="both"?[n("NaOH",""),n("KOH","")]:[n(t,"100 %")]}function bS(e,t,n,o){let i=`/alkali/${n}`,r=String(t.alkali??""),l=Fe(e,i)??Fe(e,`${i}/alkali`);return s`<div class="formula-row">
    ${l?s`<p class="complaint">${l}</p>`:d}
    <div class="row">
      ${o||t.share!=="100 %"?h({label:`${r}: share of the fats it saponifies`,of:e,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):d}
      ${h({label:`${r}: purity`,of:e,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document.",term:n===0?"purity":void 0})}
    </div>
    ${F({of:e,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${wS(t.purity_range)}`,body:()=>yS(e,i)})}
  </div>`}var wS=e=>Array.isArray(e)?`: ${e.map(String).join(" to ")}`:"";function yS(e,t){let n=`${t}/purity_range`,o=g(e,n)!==void 0;return s`${A({of:e,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?s`<div class="row">
          ${h({label:"Lowest",of:e,at:`${n}/0`,unit:"%",short:!0})}
          ${h({label:"Highest",of:e,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:d}`}var vS={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function kS(e,t){let n=Object.keys(g(e,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(vS);return s`${A({of:e,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:r=>({[r]:""}),then:r=>`/water/${r}`,hint:TS(t)})}
    <div class="row">${n.map(r=>xS(e,r))}</div>`}function xS(e,t){let n=`/water/${t}`;return t==="water_to_alkali"?h({label:"Parts of water for 1 part of pure alkali",of:e,at:n,number:!0}):t==="lye_strength"?h({label:"Strength: pure alkali in alkali and water together",of:e,at:n,unit:"%"}):h({label:"Water, as a share of the fats",of:e,at:n,unit:"%"})}function TS(e){if(!(!e||a.is_old))return`It now makes a strength of ${S(e.lye_strength_percent,1)} %; ${S(e.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${S(e.water_percent_of_fats,1)} % of the fats.`}function vo(e,t,n){let o=RS(e,t);return F({of:e,name:`${t} label`,pointers:["inci","allergens","document"].map(i=>`${t}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>s`${AS(e,`${t}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${wb(e,`${t}/allergens`,"Allergen","Add an allergen",(i,r)=>DS(e,i,r))}
        ${h({label:"Supplier's document, with its date",of:e,at:`${t}/document`,optional:!0})}`})}function RS(e,t){let n=te(e,`${t}/allergens`).length;return[g(e,`${t}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var up={name:"",share:""},SS={unsaid:void 0,one:"",many:[up]};function AS(e,t,n){let o=g(e,t),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",r=l=>l==="many"&&o?[{...up,name:o}]:SS[l];return s`${A({of:e,question:`INCI of ${n}`,at:t,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:r})}
  ${i==="one"?h({label:"INCI name",of:e,at:t}):d}
  ${i==="many"?s`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${wb(e,t,"INCI name","One more INCI name")}`:d}`}function DS(e,t,n){return A({of:e,question:`Allergen ${n+1}: on the EU's list?`,at:`${t}/listed`,chosen:g(e,`${t}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function wb(e,t,n,o,i){let r={of:e,at:t};return s`${k(r).map((l,u)=>s`<div class="row named" id=${E(r,u)}>
        ${h({label:`${n} ${u+1}`,of:e,at:`${t}/${u}/name`})}
        ${h({label:`Share ${u+1}`,of:e,at:`${t}/${u}/share`,unit:"%",short:!0})}
        ${i?.(`${t}/${u}`,u)??d} ${J(r,u,String(l.name||`${n} ${u+1}`))}
      </div>`)}
  ${ee(r,o,()=>U(r,up,n))}`}var PS=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:jS},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:BS},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:CS},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:WS}];function cp(e){return PS.map(t=>{let n={of:e,at:`/${t.list}`},o=k(n),i=(r,l)=>s`<li class="formula-row" id=${E(n,l)}>
        ${FS(e,t,n,r,l)} ${t.row(e,`${n.at}/${l}`,r)}
      </li>`;return s`<section class="card" aria-labelledby="${t.list}-title">
      <h2 id="${t.list}-title">${t.title}</h2>
      ${o.length?s`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:s`<p class="aside">${t.aside}</p>`}
      ${ee(n,t.add,()=>U(n,OS(t),t.add.replace("Add ","")))}
    </section>`})}function OS(e){return e.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function FS(e,t,n,o,i){let r=`/${t.list}/${i}`,l=Fe(e,r),u=String(o.name||`number ${i+1} of the ${t.list}`);return s`${l?s`<p class="complaint">${l}</p>`:d}
    <div class="row named">
      ${h({label:"Name",of:e,at:`${r}/name`})}
      ${t.list==="liquids"?d:Rl(e,`${r}/rate`,"How much",Tl)}
      ${J(n,i,u)}
    </div>`}function yb(e,t,n,o){let i=`${t}/goes_into`,r=g(e,i);return A({of:e,question:"Goes into",at:i,chosen:r||void 0,answers:n,puts:p=>p,hint:o||r?void 0:"The batter, unless you name another place.",optional:!o})}function vb(e,t,n){let o=g(e,`${t}/stirred_in`);return s`${yb(e,t,LS,n)}
  ${g(e,`${t}/goes_into`)==="lye"||o!==void 0?A({of:e,question:"Stirred into the lye",at:`${t}/stirred_in`,chosen:String(o??""),answers:MS,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):d}`}var MS=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],LS=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function pp(e,t,n){let o=(l,u,c)=>l?`${u}${String(l)}${c}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),r=["bulk_density","density","limit"].map(l=>`${t}/${l}`);return F({of:e,name:`${t} densities`,pointers:r,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>s` <div class="row">
          ${h({label:"Bulk density (for spoons)",of:e,at:`${t}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${h({label:"True density (in the batter)",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${Rl(e,`${t}/limit`,"The most that the supplier's document allows",mb,!0)}`})}function mp(e,t,n,o){let i=(l,u)=>l===void 0?"":l==="none"?`no ${u}`:u,r=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return F({of:e,name:`${t} holds`,pointers:[`${t}/contains_fat`,`${t}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${r&&`: ${r}`}`,body:()=>s`${cb(e,t)} ${o?ip(e,t):d}`})}var Al=(e,t,n)=>vo(e,t,String(n.name||"it"));function BS(e,t,n){return s`${vb(e,t,!0)}
    <div class="folds">${mp(e,t,n,!0)} ${pp(e,t,n)} ${Al(e,t,n)}</div>`}function kb(e,t,n){return F({of:e,name:`${t} place`,pointers:[`${t}/goes_into`,`${t}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>vb(e,t,!1)})}function CS(e,t,n){return s`<div class="folds">
    ${pp(e,t,n)} ${Al(e,t,n)} ${kb(e,t,n)} ${mp(e,t,n,!1)}
  </div>`}function WS(e,t,n){return s`${ES(e,t)}
    <div class="folds">
      ${pp(e,t,n)} ${Al(e,t,n)} ${kb(e,t,n)} ${mp(e,t,n,!0)}
    </div>`}var IS=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function ES(e,t){let n=`${t}/dispersed_in`,o=g(e,n)!==void 0,i=g(e,`${n}/from`);return s`${A({of:e,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:l=>l==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?s`<div class="row">
            ${me({label:"Which oil",of:e,at:`${n}/fat`,answers:xl(e),unsaid:"choose ..."})}
            ${h({label:"Oil for 1 g of colour",of:e,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${A({of:e,question:"That oil is",at:`${n}/from`,chosen:i,answers:IS,puts:l=>l,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:d}`}var NS=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function jS(e,t,n){let o=(i,r,l)=>F({of:e,name:`${t}/${i}`,pointers:[`${t}/${i}`],summary:r,body:l});return s`${qS(e,t,n)}
    ${yb(e,t,[["lye","The lye"],["batter","The batter"]],!0)}
    ${zS(e,t)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>HS(e,`${t}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>ip(e,t))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>h({label:"Density",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${Al(e,t,n)}
    </div>`}function HS(e,t){let n=g(e,t)===!0?"ice":"liquid";return A({of:e,question:"Goes in as ice, which keeps the lye cooler",at:t,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function qS(e,t,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=r=>({...ge(e,t,["replaces","rate"]),[r]:""});return s`${A({of:e,question:"How much",at:t,asked_at:`${t}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:US,puts:i})}
  ${o==="replaces"?s`<div class="row">
          ${h({label:"Of the formula's water",of:e,at:`${t}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:d}
  ${o==="rate"?Rl(e,`${t}/rate`,"Rate",Tl):d}`}var US=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function zS(e,t){let n=`${t}/composition`,o=typeof g(e,n)=="object",i={water:"",sugar:"",salt:"",source:""},r=(u,c)=>h({label:u,of:e,at:`${n}/${c}`,unit:"%",short:!0});return s`${A({of:e,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:u=>u==="label"?i:""})}
  ${o?s`<div class="row">${r("Water","water")} ${r("Sugar","sugar")} ${r("Salt","salt")}</div>
          ${op(e,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...xl(e)])}
          <div class="row">
            ${h({label:"Where the figures are from",of:e,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:s`<div class="row">
          ${me({label:"Built-in figures of",of:e,at:n,answers:NS.map(u=>[u,u]),unsaid:"choose ..."})}
        </div>`}`}var fs=()=>Object.keys(g("studio","/cups")??{}),hs=()=>fs().length===1?{net:""}:fs().length?{cup:"",net:""}:{holds:"",net:""},xb="\0another";function gs(e,t="Cup holds"){let n=`${e}/holds`,o=fs();if(g("run",n)!==void 0||!o.length)return s`${h({label:t,at:n,unit:"ml",short:!0})}${o.length?KS(e):d}`;let i=l=>l===xb?q("run","Another cup",e,{...fp(e),holds:""},oe("run",n)):q("run",`Cup: ${l}`,e,{...fp(e),cup:l}),r=l=>O("studio",`/cups/${j(l)}`);return me({label:"Which cup",at:`${e}/cup`,answers:[...o.map(l=>[l,`${l}, ${r(l)}`]),[xb,"Another cup"]],unsaid:"choose ...",chosen:O("run",`${e}/cup`)||(o.length===1?o[0]:""),take:i})}function fp(e){let{cup:t,holds:n,...o}=g("run",e)??{};return o}var KS=e=>s`<button type="button" @click=${()=>q("run","A cup of the studio",e,fp(e))}>
    A cup of my studio
  </button>`;function Rb(){return le()?s`<div class="row">
    ${fs().map(e=>h({of:"studio",label:`${e} holds`,at:`/cups/${j(e)}`,unit:"ml",short:!0,optional:!0}))}
    ${JS()}
  </div>`:s`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function JS(){let e=()=>{let t=document.getElementById("new-cup"),n=t.value.trim()||Tb();t.value="",q("studio",`${n} added`,`/cups/${j(n)}`,"",oe("studio",`/cups/${j(n)}`))};return s`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${Tb()} />
    </div>
    <button type="button" @click=${e}>Add the cup</button>`}function Tb(){for(let e=1;;++e){let t=e===1?"weigh-cup":`weigh-cup ${e}`;if(!fs().includes(t))return t}}var VS=["ice bath","cold water","fridge","room"].map(e=>[e,e==="room"?"the room":e]),hp=e=>({run:`/${e}/temperatures`,studio:`/temperatures/${e}`});function Dl(e){let{run:t}=hp(e);return F({name:t,pointers:[t],summary:"How warm",body:()=>s` <p class="hint">
          ${le()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${yo("How warm",[hp(e)])} ${W("run",t)} ${QS(e)}`})}function QS(e){let{run:t,studio:n}=hp(e),o=u=>({run:`${t}/${u}`,studio:`${n}/${u}`}),i=a.units==="us"?"\xB0F":"\xB0C",r=(u,c,p=i)=>He(o(u),{label:c,unit:p,optional:!0,takes_part:!0,short:!0}),l=o("cooled_in");return s`<div class="row">
    ${r("room_at","Room and dry alkali")} ${r("water_at","Water")}
    ${r("ice_share","Of the water, as ice","%")} ${r("lye_used_at","Lye when it is used")}
    ${r("fats_at","Fats")} ${r("batter_below","Batter must stay below")}
    ${me({label:"The lye cools in",...rs(l),answers:VS,unsaid:"not given",optional:!0})}
  </div>`}var wt=()=>$(a.run.now,"/pipe")!==void 0;function Sb(){let e=t=>{let n=M(t,"/pipe",{formula:"",fills_headspace:"",whip:hs()});return le()?n:M(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};ue("set-up pipe"),bt("run","Topping added",e,L("lane-pipe"))}function GS(e){let t=Object.keys($(e,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",$(e,"/batch/whippings")!==void 0&&t?"/batch":"/batch/whippings"].reduce((o,i)=>$(o,i)===void 0?o:M(o,i,void 0),e)}function YS(){bt("run","Topping removed",GS,L("topping-back"))}function Ab(){let e=a.past.at(-1)?.run?.now;return!e||$(e,"/pipe")===void 0||wt()?d:s`<button type="button" id="topping-back" @click=${Ir}>Bring the topping back</button>`}function gp(){return s`${r1()} ${Dl("pipe")}
    <p class="choice"><button type="button" @click=${YS}>Take the topping away</button></p>`}var ZS=["trials","beads","envelope"];function _p(e){return ZS.every(t=>g("run",`/pipe/${t}`)===void 0)&&$t("run","/pipe",`${Y("run","/pipe/trials")}-add`,"How large the topping is"),s`<h3>How large is the topping?</h3>
    ${W("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${nt({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:hs()},body:XS})}
      ${nt({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:t1})}
    </div>
    ${nt({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:B$,body:()=>C$(e)})}
    ${e?o1(e):d}`}function XS(){let e={at:"/pipe/trials/weighed",least:1};return s`<div class="trials">
      ${k(e).map((t,n)=>s`<div class="row" id=${E(e,n)}>
            ${h({label:`Trial ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${J(e,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${ee(e,"One more trial",()=>U(e,"","trial"))}
    <div class="row">
      ${h({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${gs("/pipe/trials/weigh_cup")}
    </div>
    ${W("run","/pipe/trials/weigh_cup")} ${e1()}`}var e1=()=>s`<div class="row">
    ${h({label:"Volume of one, where you know it better",at:"/pipe/trials/volume_each",unit:"ml",optional:!0,hint:"Above its foot, as your batches tell it. It is used in place of the trials; empty it to go by them again."})}
  </div>`;function t1(){let e="/pipe/envelope",t=g("run",`${e}/form`);return s`${A({question:"Form of the outline",at:`${e}/form`,chosen:t,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${h({label:"Diameter",at:`${e}/diameter`,unit:"mm",short:!0})}
      ${h({label:"Height",at:`${e}/height`,unit:"mm",short:!0})}
      ${h({label:"Share that is soap, not air",at:`${e}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var n1={given:"As you know it",trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function o1(e){let t=e.visible_by;if(!t)return d;let n=["given","trials","beads","envelope"].map(i=>({way:i,ml:t[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return s`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:r},l)=>I({key:`pipe.by.${i}`,label:n1[i],note:o(l),shown:ke(a.units,r),of:`pipe.visible_by.${i}_ml`}))}
    ${i1(e)}`}function i1(e){let t=e.visible_by?.suggested_correction;if(!t||a.is_old)return d;let n=S(t.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",r=i&&$(a.run.now,`${o}/correction`)!==t.correction,l=()=>q("run","correction kept",o,{correction:t.correction,trials:t.trials});return s`<p>
      Your hand lays down ${n} times the computed beads (${t.trials}
      ${t.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${r?s`<button type="button" @click=${l}>Keep ${n} for my tip</button>`:d}`}function $p(e){return s`<h3>The whip planned for</h3>
    <div class="row">
      ${h({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g",term:"weigh_cup"})}
      ${gs("/pipe/whip")}
    </div>
    ${W("run","/pipe/whip")}
    ${e?.loads?s`<p class="aside of-plan">${e.loads} bag loads.</p>`:d}`}function r1(){let e="/pipe/pace",t=(n,o,i,r=!1)=>h({label:n,at:`${e}/${o}`,unit:i,optional:r,short:!0});return F({name:"pace",pointers:[e],summary:"Piping speed",body:()=>nt({at:e,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>s`<div class="row">
            ${t("Can be piped for","open_time","min")} ${t("To pipe one","time_per_piece","s")}
            ${t("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function s1(e,{at:t,figure:n}){let o=$(e,t),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function _s(e,t,n){return t?s`<button type="button" @click=${()=>n(t.at,s1(e,t))}>It is really so: keep it</button>`:d}var bp=(e,t)=>e!==void 0&&e.length===t.length&&e.every((n,o)=>n===t[o]),Pl;function Db(e){mo();let{plan:t,run:n,record:o,is_old:i}=a,r=[e,n.file,t,o.version];return Ob(r,!i&&t!==void 0,{mould:e,batches_of:n.file,below_brim_mm:t?.pour.below_brim_mm})}var Pb=(e,t)=>Ob([e,t],t!==void 0,{mould:e,batches_of:"studio.json"});function Ob(e,t,n){return bp(a.ways.of,e)?a.ways:(t&&!bp(Pl,e)&&a1(e,n),{})}async function a1(e,{mould:t,batches_of:n,below_brim_mm:o}){Pl=e;let i=o===void 0?{}:{"below-brim":`${o} mm`},r=await l1({file:t,"batches-of":n,...i});bp(Pl,e)&&f({ways:{of:e,...r}}),Pl=void 0}async function l1(e){try{return{ways:(await rn(e)).ways}}catch(t){if(!(t instanceof w))throw t;return{failed:B(t.complaint)}}}var yp=500,d1=()=>$(a.run.now,"/cut")===void 0&&u1()>=yp,u1=()=>a.plan?.pour.brimful_ml??a.measured?.gauge.pockets[0]?.brimful_ml??0,Ol={run:"/cut/kerf",studio:"/kerf"};function Fb(e){ue("set-up cut"),q("run","Cut","/cut",{bar:wp[e],...le()?{}:{kerf:""}},oe("run",`/cut/bar/${Object.keys(wp[e])[0]}`))}function c1(){q("run","Left whole","/cut",void 0,L("cut-into-bars"))}function Mb(){return d1()?s`<button type="button" id="cut-into-bars" @click=${()=>Fb("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>Fb("slab")}>Cut it into bars</button>`:d}var wp={loaf:{thickness:""},slab:{length:"",width:""}};function p1(){let e=g("run","/cut/bar")??{};return"thickness"in e?"loaf":"length"in e||"width"in e?"slab":void 0}var m1={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function Lb(){let e=p1(),t=(o,i)=>h({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=O("run","/cut/along");return s` ${A({question:"What is cut?",at:"/cut/bar",chosen:e,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>wp[o]})}
    <div class="row">
      ${e==="loaf"?h({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):d}
      ${e==="slab"?["length","width"].map(o=>h({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):d}
      ${He(Ol,{label:"Kerf of each cut",unit:"mm",short:!0,term:"kerf"})}
      ${t("Off each end","end_trim")} ${t("Off each side","side_trim")}
      ${t("Planed off the top","top_planing")}
      ${t(e==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm. ${yo("Kerf",[Ol])}</p>
    ${e?A({question:e==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:m1[e],puts:o=>o||void 0}):d}
    <button type="button" @click=${c1}>Leave it whole</button>`}var Fl=e=>/^\s*0*[1-9]\d{0,8}\s*$/.test(e)?Number(e):void 0;function Ml(e,t,n){return s`<div class="field short">
    <label for=${e} data-said="required">Pieces to sell</label>
    <input
      id=${e}
      aria-required="true"
      .value=${P(t)}
      @input=${o=>n(o.target.value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`}var Ll=e=>x(ke(a.units,e)),f1=e=>e.charAt(0).toUpperCase()+e.slice(1);function Bl({ways:e,failed:t}){return t!==void 0?s`<p class="hint">How the ways of measuring compare is not known: ${t}.</p>`:e?.ways.length?s`<section class="ways" aria-labelledby="ways-title">
    <h3 id="ways-title">What one cavity holds, by each way</h3>
    <p>${e.used_because}</p>
    <ul class="each-way">
      ${e.ways.map(n=>h1(n,e))}
    </ul>
    ${_1(e)} ${e.remarks.map(n=>s`<p class="aside">${n}</p>`)}
  </section>`:d}function h1(e,{below_brim_mm:t}){let{by:n,brimful_ml:o,at_line_ml:i,low_ml:r,high_ml:l,rests_on:u,used:c}=e;return s`<li data-by=${n} class=${c?"is-used":""}>
    <p class="way-name">
      <b>By ${n}</b> ${c?s`<span>✓ the plan uses it</span>`:s`<span>${g1(e)}</span>`}
    </p>
    ${i===null?d:s`<p>to the pour line <b class="at-line">${Ll(i)}</b></p>`}
    <p>to the brim <b class="brimful">${Ll(o)}</b></p>
    <p>
      ${r===null||l===null?d:s`between ${Ll(r)} and ${Ll(l)}${t===null?"":" to the line"}: `}${r===null?f1(u):u}
    </p>
  </li>`}function g1({differs_percent:e}){let t=Je(Math.abs(e),1);return t==="0.0"?"the same":`${t} % ${e>0?"more":"less"}`}var _1=({below_brim_mm:e,line_of:t})=>e===null?d:s`<p class="aside">
        The pour line is ${x($e(a.units,e))} below the
        brim${t==="as asked"?"":`, ${t}`}.
      </p>`;function $1({outline:e,above:t}){let n=Math.max(4,(e.right-e.left)*.06),o=t.flat().map(([,m])=>m),[i,r]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],l=-e.brim-2*n+i,u=l-r-n,c=[e.left-n,u,e.right-e.left+2*n,-e.floor+n-u],p=(m,_)=>R`<path class="shaded pour" fill-rule="evenodd" d=${_} /><path class="wall ${m}" fill-rule="evenodd" d=${_} />`;return s`<div class="drawing tall">
    <svg
      viewBox=${c.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",jr(t,l))}${p("side",jr(e.loops))}
    </svg>
  </div>`}function Gi(e,t=!1,n=[]){let o=n.length?s`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:d;if(!e)return s`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=e,r=i.pockets[0];return s`${$1(e)}
    <p class="order ${t?"old":""}" role="status">
      Holds
      <b>${x(ke(a.units,r.brimful_ml))}</b>${i.pockets.length>1?s` in each of ${i.pockets.length}, ${x(ke(a.units,i.total_ml))} together`:d},
      ${x($e(a.units,r.brim_mm-r.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?s`<p class="aside">
            ${i.measurements.map(l=>`By ${l.by} ${x(ke(a.units,l.brimful_ml))}`).join("; ")}.
          </p>`:d}
    ${i.notes.length?s`<ul class="limits">
            ${i.notes.map(l=>s`<li>${l.text}</li>`)}
          </ul>`:d}`}var b1={mm:"in",g:"oz","\xB0C":"\xB0F"},w1={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function Cl(e,t,n=""){let o=vp(e);if(o)return o.unit??"";let i=Ot($(K(),e));return w1[t]?.test(i)?i:n||(a.units==="us"?b1[t]??t:t)}var Wl=()=>f({typed:void 0}),Yi=e=>`d${e.replaceAll("/","-")}`,vp=e=>a.typed?.key===Yi(e)?a.typed:void 0,Il=e=>vp(e)?.text??String($(K(),e)??"");function ko(e){let{complaint:t}=ie();return t&&(t.field===e||t.field.startsWith(`${e}/`))?t.line:void 0}function kp(e,t,n,o){let{pointer:i}=e,r=l=>{let u=l.target.value,c=e.unit?Cl(i,e.unit,e.unit_before):"";f({typed:{key:Yi(i),text:u,unit:c}}),Be(i,y1(e,u,c))};return s`<input
    id=${Yi(i)}
    .value=${P(Il(i))}
    @input=${r}
    @blur=${Wl}
    @keydown=${n??d}
    autocomplete="off"
    spellcheck="false"
    inputmode=${e.count?"numeric":"text"}
    aria-label=${o??d}
    aria-describedby=${t??d}
    aria-invalid=${ko(i)?"true":"false"}
  />`}function y1(e,t,n){if(!((e.optional||e.count)&&!t.trim()))return e.count&&/^\s*\d{1,6}\s*$/.test(t)?Number(t):n&&Oe(t)?`${t.trim()} ${n}`:t}function yt(e,t){let n=Yi(e.pointer),o=ko(e.pointer),i=v1(e.pointer)??e.hint,r=e.unit?` (${Cl(e.pointer,e.unit,e.unit_before)})`:"";return s`<div class="field ${e.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${e.label}${r}</label> ${kp(e,o||i?`${n}-said`:void 0,t)}
    ${be(n,o,i)}
  </div>`}function v1(e){let t=$(K(),e),n=vp(e);if(!(!n?.text.includes("/")||typeof t!="string"||t===n.text))return`taken as ${t}`}function El(e){let t=e.toLowerCase(),{file:n,shipped:o}=ie().open,i=o?"":n;return a.files?.moulds.find(r=>r.file!==i&&r.name.trim().toLowerCase()===t)?.file}async function $s(e){let{open:t}=ie();try{if(await ln(t),t.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));f({files:await Xs()})}catch(n){if(!(n instanceof w))throw n;return Ac(n)}a.run.file&&(Kt(),se()),e(t.file)}var Kn="/shape/points",Bb=500,xo=(e,t)=>[Kn,e,...t?[t]:[]].join("/"),Cb=e=>Array.from({length:e.least},()=>({}));function Wb(e){let t=pt(K(),Kn),n=x1(),{complaint:o}=ie(),i=o?.field===Kn&&!o.about?o.line:void 0;return s`<h3 id="points-title">Points</h3>
    <p class="hint">${e.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${e.columns.map(r=>s`<span
              >${r.label} (${Cl(xo(-1,r.name),r.unit,Ib(e,t.length,r.name))})</span
            >`)}
      </div>
      ${t.map((r,l)=>k1(e,l,n))}
    </div>
    ${i?s`<p class="complaint">${i}</p>`:d}
    <button type="button" ?disabled=${t.length>=Bb} @click=${()=>jl(e,t.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function k1(e,t,n){let o=n.has(t)?`point ${n.get(t)}`:"empty point",i=T1(t),r=l=>{let{name:u,label:c,unit:p}=e.columns[l],m={label:c,pointer:xo(t,u),unit:p,unit_before:Ib(e,t,u)},_=`${c}, ${n.has(t)?o:`point ${t+1}`}`;return kp(m,i?`point-${t}-said`:void 0,R1(e,t,l),_)};return s`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(t)??""}</span>${r(0)}${r(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>jl(e,t)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>Eb(e,t)}>×</button>
    ${i?s`<p id="point-${t}-said" class="complaint">${i}</p>`:d}
  </div>`}function x1(){let e=[...Sr(K()),...ma(K())].sort((t,n)=>t-n);return new Map(e.map((t,n)=>[t,n+1]))}function T1(e){let{complaint:t}=ie();return ko(xo(e))??(t?.about===xo(e)?t.line:void 0)}function Ib(e,t,n){let o=(i,r)=>Ot($(K(),xo(i,r)));for(let i=t-1;i>=0;--i)if(o(i,n))return o(i,n);return e.columns.map(({name:i})=>o(t,i)).find(Boolean)??""}function Nl(e,t){queueMicrotask(()=>document.getElementById(Yi(xo(e,t)))?.focus())}function jl(e,t){let n=[...pt(K(),Kn)];n.length>=Bb||(n.splice(t,0,{}),Wl(),Be(Kn,n),Nl(t,e.columns[0].name))}function Eb(e,t,n=0){let o=pt(K(),Kn).filter((i,r)=>r!==t);Wl(),Be(Kn,o.length?o:[{}]),Nl(Math.max(0,Math.min(t-(n?1:0),o.length-1)),e.columns[n].name)}function R1(e,t,n){let[o,i]=e.columns.map(({name:r})=>r);return r=>{let l=!Il(xo(t,o))&&!Il(xo(t,i));if(r.key==="Enter"&&r.shiftKey)jl(e,t+1);else if(r.key==="Enter"&&n===0)Nl(t,i);else if(r.key==="Enter"&&t+1<pt(K(),Kn).length)Nl(t+1,o);else if(r.key==="Enter")jl(e,t+1);else if(r.key==="Backspace"&&l&&pt(K(),Kn).length>1)Eb(e,t,t>0?1:0);else return;r.preventDefault()}}var xp={weighings:[""]},Tp=/\.(3mf|gltf|glb)$/i;function Hl(e){let t=Yn(e);return t?{kind:e,points:Cb(t)}:{kind:e}}var S1=()=>Be("/water",xp),wn=e=>Et(K(),e),bs=()=>Rr(K());function Nb(e){let{open:t,answer:n,is_old:o}=ie();return s`${_n(t,()=>{$s(e)})} ${$n(t)}
    ${t.shipped?d:Vi(a.files?.moulds.find(i=>i.file===t.file))}
    ${wn("shape")&&wn("mesh")?s`<p class="hint">The mesh is measured; its measures are a check.</p>`:d}
    ${wn("shape")?ce("Shape",bs(),Object.entries(Ph),A1):d}
    <div class="beside ${Yn(bs())?"rows":""}">
      <div>
        ${Rp()} ${wn("shape")?P1():d} ${wn("mesh")?O1():d}
        ${Sp()} ${wn("water")?M1():d} ${B1()}
      </div>
      <div class="stays">${Gi(n,o,Hb())} ${C1(e)}</div>
    </div>`}function A1(e){let t={...ie().shapes,[bs()]:K().shape};v(ie(),{shapes:t,answer:void 0}),Be("/shape",t[e]??Hl(e))}function D1(){let{shipped:e,file:t}=ie().open;return e?a.files?.moulds.find(n=>n.file===t)?.name??t:void 0}function Rp(){let e=D1();return yt({label:"What you call it",pointer:"/name",wide:!0,hint:e?`${e} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function P1(){let e=bs(),t=Yn(e);return s`${yi(e).length?s`<div class="row">
          ${yi(e).map(n=>yt({...n,pointer:`/shape/${n.name}`}))}
        </div>`:d}
  ${t?Wb(t):d}`}function Sp(e=lu(K())){return s`<div class="row">
      ${e?d:yt({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${yt({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${yt({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${yt({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var Ap=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],Dp=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function O1(){let e=o=>String($(K(),`/mesh/${o}`)??""),t=(o,i,r)=>{let l=ko(`/mesh/${i}`);return s`<h4>${o}</h4>
      ${ce(o,e(i),r,u=>Be(`/mesh/${i}`,u||void 0))}
      ${l?s`<p class="complaint">${l}</p>`:d}`},n=ko("/mesh/file");return s`<h3>Its mesh <small>${e("file")}</small></h3>
    ${n?s`<p class="complaint">${n}</p>`:d}
    ${Tp.test(e("file"))&&!e("unit")?d:t("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${t("What it shows","role",Ap)} ${t("Which way is up","up",Dp)}
    ${e("role")==="body"?F1():d}
    <div class="row">
      ${yt({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${yt({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function F1(){let e=$(K(),"/mesh/on_board")===!0?"yes":"no";return s`<h4>Open below, and stood on a board?</h4>
    ${ce("Stood on a board",e,[["no","No"],["yes","Yes, the board closes it"]],t=>Be("/mesh/on_board",t==="yes"?!0:void 0))}`}function M1(){let e=$(K(),"/water/filled_to"),t=e===void 0?void 0:e==="brim"?"brim":$(e,"/depth")!==void 0?"depth":"below_brim",n=r=>Be("/water/filled_to",r==="brim"?"brim":{[r]:""}),o=$(K(),"/water/weighed_in"),i=t===void 0||t==="brim"?ko("/water/filled_to"):void 0;return s`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${yt({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${ce("Filled to",t,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?s`<p class="complaint">${i}</p>`:d}
    ${t==="depth"?yt({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):d}
    ${t==="below_brim"?yt({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):d}
    <h4>Weighed in</h4>
    ${ce("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],r=>Be("/water/weighed_in",r))}
    <div class="row">
      ${pt(K(),"/water/weighings").map((r,l)=>yt({label:`Water, round ${l+1}`,pointer:`/water/weighings/${l}`,unit:"g"},L1(l)))}
    </div>
    ${ie().complaint?.field==="/water/weighings"?s`<p class="complaint">${ie().complaint.line}</p>`:d}
    <button type="button" @click=${jb}>One more round</button>`}function jb(){let e=pt(K(),"/water/weighings").length;Be(`/water/weighings/${e}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${e}`)?.focus())}var L1=e=>t=>{t.key==="Enter"&&(e+1===pt(K(),"/water/weighings").length?jb():document.getElementById(`d-water-weighings-${e+1}`)?.focus())};function B1(){let e=(t,n)=>s`<button type="button" @click=${n}>${t}</button>`;return s`<div class="choice">
    ${wn("shape")?d:e("Add measures, as a check",()=>Be("/shape",Hl("block")))}
    ${wn("shape")&&wn("mesh")?e("Leave the measures out",()=>Be("/shape",void 0)):d}
    ${wn("water")?e("Leave the water out",()=>Be("/water",void 0)):e("Add weighed water",S1)}
  </div>`}function Hb(){let e=ma(K()).length;return e?[...Ar(K()),e===1?"the other number of a point":`the other numbers of ${e} points`]:Ar(K())}function C1(e){let t=String(K().name??"").trim(),n=El(t),{open:o,answer:i,is_old:r,complaint:l}=ie(),u=i&&!r&&!l&&!Hb().length&&t&&!n,c=o.shipped?"":o.file;return s`<button type="button" class="strong" ?disabled=${!u} @click=${()=>{$s(e)}}>
      ${c?"Save the change":"Use this mould"}
    </button>
    ${c?s`<p class="aside">It stays in ${c}.</p>`:d}
    ${t?d:s`<p class="hint">Give it a name first.</p>`} ${Pp(t,n)}
    ${l?s`<p class="alarm" role="status">${W1(l.field)}${l.line}</p>
            ${_s(K(),l.keep,Be)}`:d}`}var Pp=(e,t)=>t?s`<p class="complaint" role="status">
        Another mould is called ${e} already (${t}); give this one a name of its own.
      </p>`:d;function W1(e){let[,t]=/^\/shape\/points\/(\d+)/.exec(e)??[];if(t)return`Point ${Number(t)+1}: `;if(e==="/shape/points")return"";let n=yi(bs()).find(({name:r})=>e===`/shape/${r}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${e.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:e?`${e.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var I1=200*2**20;async function qb(e){if(!e)return;let t={name:e.name,share:0,sizes:[],is_measuring:!1,questions:0};if(f({mesh:t}),Be("/name",e.name.replace(/\.\w+$/,"")),e.size>I1){let n=`${e.name} has ${Math.ceil(e.size/1048576)} MiB`;return v(t,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await zf(e,o=>v(t,{share:o}));v(t,{share:1,upload:n.file}),await zb(t)}catch(n){v(t,{complaint:n instanceof w?n.message:String(n)})}}async function zb(e){let t=e.questions+1;v(e,{questions:t,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:r}=e;try{let l=await Fi({file:n,unit:o,role:i,up:r});t===e.questions&&v(e,{answer:l,is_measuring:!1})}catch(l){if(!(l instanceof w))throw l;if(t!==e.questions)return;let u=o?e.sizes:H1(l.complaint),c=u.length&&!o?void 0:B(l.complaint);v(e,{sizes:u,complaint:c,is_measuring:!1})}}async function E1(e){let{questions:t,upload:n,unit:o,up:i}=e;try{let r=await Nf({file:n,unit:o,up:i});t===e.questions&&v(e,{inspection:r})}catch(r){if(!(r instanceof w))throw r;t===e.questions&&v(e,{complaint:B(r.complaint)})}}function N1(e){return e.inspection?s`<h4>Every defect of the mesh</h4>
    ${e.inspection.defects.length?s`<ul>
            ${e.inspection.defects.map(j1)}
          </ul>`:s`<p>None.</p>`}`:s`<button type="button" @click=${()=>{E1(e)}}>List every defect of the mesh</button>`}var j1=({text:e})=>s`<li>${e}</li>`;function H1({asks:e,choices:t=[]}){if(e!=="unit")return[];let n=o=>(o??[]).map(i=>S(i,2)).join(" \xD7 ");return t.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function Op(e,t){v(e,t),zb(e)}function Kb(e,t){let n=l=>{let u=l.target;qb(u.files?.[0]),u.value=""},o=l=>{l.preventDefault(),qb(l.dataTransfer?.files[0])},[i,r]=a.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return s` <div class="drop" @dragover=${l=>l.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${r} @change=${n} />
    </div>
    ${a.mesh?q1(a.mesh,e,t):d}`}function q1(e,t,n){let i=(e.sizes.length?e.sizes:[["mm",""],["cm",""],["in",""]]).map(([r,l])=>[r,l?`${r}: ${l} ${r}`:r]);return s` <h3>${e.name}</h3>
    ${e.share<1&&!e.complaint?s`<label for="sent">Sending, ${Math.round(100*e.share)} %</label
            ><progress id="sent" max="1" .value=${e.share}></progress>`:d}
    ${e.is_measuring?s`<p role="status">Measuring ...</p>`:d}
    ${e.upload&&!Tp.test(e.name)?s`<h4 id="unit-title">${e.unit?"Its unit":"Which size is it?"}</h4>
            ${ce("Unit of the file's numbers",e.unit,i,r=>Op(e,{unit:r}))}`:d}
    ${e.complaint?s`<p class="alarm" role="alert">${e.complaint}</p>`:d}
    ${e.upload&&!e.is_measuring&&(e.complaint||e.answer)?N1(e):d}
    ${e.upload&&(e.unit||e.answer)?s`<h4>What it shows</h4>
            ${ce("Role",e.role??e.answer?.gauge.role,Ap,r=>Op(e,{role:r}))}
            <h4>Which way is up</h4>
            ${ce("Up",e.up??"",Dp,r=>Op(e,{up:r||void 0}))}`:d}
    ${e.answer?s`${Gi(e.answer)} ${U1(e,t,n)}`:d}`}var Jb=e=>e.answer.gauge.role!=="cavity"||e.answer.gauge.pockets.length>1;function U1(e,t,n){let o=String(K().name??"").trim(),i=El(o),r=o&&!i&&!e.is_keeping;return s`${Rp()} ${Sp(Jb(e))} ${Pp(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${()=>Ub(e,n,t)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${e.is_keeping} @click=${()=>Ub(e,n)}>More settings</button>
    </div>
    ${e.is_keeping?s`<p role="status">Keeping it ...</p>`:d}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function Ub(e,t,n){v(e,{is_keeping:!0});try{let o=z1(e,await Kf(e.upload,J1(e.name)));if(!n||e.answer.gauge.pockets.length>1&&!await K1(o))return t(o);Ii(o,"mesh",ie().title),await $s(n),v(e,{complaint:a.mould?.complaint?.line})}catch(o){v(e,{complaint:o instanceof w?o.message:String(o)})}v(e,{is_keeping:!1})}function z1(e,t){let n={file:t,role:e.answer.gauge.role};e.unit&&(n.unit=e.unit),e.up&&(n.up=e.up);let{cavities:o,...i}=K();return{...i,...Jb(e)||o===void 0?{}:{cavities:o},mesh:n}}async function K1(e){try{return await rn({file:"new.mould.json",mould:e}),!0}catch(t){if(t instanceof w&&t.status===422)return!1;throw t}}var J1=e=>vi(e.replaceAll(/[^\w.-]+/g,"_"),a.files?.meshes??[]);var ql={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},Vb={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function Qb(e){De(),mn();let t={...Vb,shape:Hl("block")};e==="mesh"?Ii(Vb,"mesh",ql[e]):Ii(e==="water"?{...t,water:xp}:t,"form",ql[e]),zl()}async function Gb(e,t){mn();let n=await z_(e,t);return n&&zl(),n}async function Ul(e){mn(),await K_(e)&&zl()}function V1(e){Ii(e,"form","More about this mould"),zl()}function zl(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function Yb(e){if(!a.mould)return;let{way:t,title:n}=a.mould;return s`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${t==="mesh"?Kb(e,V1):Nb(e)}
  </section>`}var Fp=()=>f({chosen_mould:void 0});function ws(e,t){De();let n=a.files?.moulds.find(r=>r.file===e),o=a.catalogue.find(r=>r.path===e),i={file:e,name:n?.name||o?.name||e,note:n?.note??"",shipped:n?.shipped??!0,sell:"",slice:"",told:t};f({chosen_mould:i}),Zb(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}var Q1=2e3;async function Zb(e){if(e===a.chosen_mould)try{v(e,{answer:await Fi({file:e.file})}),v(e,{complaint:void 0})}catch(t){v(e,{complaint:t instanceof w?t.message:String(t)}),t instanceof w&&t.may_pass&&window.setTimeout(()=>{Zb(e)},Q1)}}var G1=e=>a.files?.moulds.find(t=>t.file===e);function Xb(e,t){let n=()=>t(async()=>{await Gb(e.file,e.shipped)&&Fp()});return s`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${e.name} <small>${e.shipped?"built-in":`your own, ${e.file}`}</small>
    </h2>
    ${e.told?s`<p role="status">${e.told}</p>`:d} ${e.note?s`<p>${e.note}</p>`:d}
    ${$l(G1(e.file))}
    ${e.complaint?s`<p class="alarm" role="alert">It cannot be measured: ${e.complaint}</p>`:d}
    <div class="beside">
      <div>
        ${e.answer?Gi(e.answer):e.complaint?d:s`<p role="status">Measuring ...</p>`}
        ${Bl(Pb(e.file,e.answer?.gauge))}
        <button type="button" @click=${n}>${e.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${e.complaint?d:X1(e,t)}
    </div>
  </section>`}var ew=({answer:e})=>(e?.gauge.pockets[0]?.brimful_ml??0)>=yp;function Y1(e){let t=ew(e)?e.slice.trim():"";return Oe(t)?`${t} mm`:t||void 0}var Z1=e=>s`<div class="field short">
    <label for="mould-slice" data-said="mm">Thickness of a slice</label>
    <input
      id="mould-slice"
      .value=${P(e.slice)}
      @input=${t=>v(e,{slice:t.target.value})}
      autocomplete="off"
      spellcheck="false"
      aria-describedby="mould-slice-said"
    />
    <p class="hint" id="mould-slice-said">Left blank, it is not cut into slices.</p>
  </div>`;function X1(e,t){let n=Fl(e.sell),o=Y1(e),i=r=>()=>t(()=>el({mould:e.file,name:e.name,formula:r,sell:n,slice:o}));return s`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    <div class="row">
      ${Ml("mould-sell",e.sell,r=>v(e,{sell:r}))}
      ${ew(e)?Z1(e):d}
    </div>
    ${n?d:s`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(a.files?.formulas??[]).map(r=>s`<li>
            <button type="button" ?disabled=${!e.answer||!n} @click=${i(r.file)}>
              <b>${r.name}</b><span>${r.note||r.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function ys(){let{view:e,run:t,order:n,formula_of:o,formulas:i,mould:r,chosen_mould:l,stock:u}=a;if(e!=="reading")return Sn(e)?{name:e,file:t.file,of:t}:e==="moulds"&&r?{name:"describing",file:r.open.id,of:r}:e==="moulds"&&l?{name:"chosen",file:l.file,of:l}:e==="order"?{name:e,file:n?.open.file,of:n}:e==="trail"?{name:e,file:u.trail?.of}:e!=="formula"?{name:e}:o==="apart"?{name:"formula",file:i.apart?.file,of:i.apart}:{name:wr[o],file:t.file,of:t}}async function nw({name:e,file:t}){let n=De();if(!(!(e===wr.apart&&a.formulas.apart?.file===t)&&!await tl())&&n())try{await eA(e,t)}catch(i){if(!(i instanceof w||i instanceof SyntaxError))throw i;f({view:"runs",list_complaint:i.message})}}async function eA(e,t=""){let n=e;if(Sn(n))return tw(t,n);let o=["pour","pipe"].find(i=>wr[i]===e);if(o){await tw(t,"formula"),a.view==="formula"&&at(o);return}if(e===wr.apart)return Zr(t);if(e==="order")return Nn(t);if(e==="trail"&&t)return Le(t);await tA(e,t)}async function tw(e,t){e===a.run.file||!e?f({view:a.run.file?t:"runs",typed:void 0}):await En(e,t)}async function tA(e,t){let n=e;Fp(),mn(),f({view:ct(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,held_open:void 0,fault:void 0});let o=ya(it).find(i=>i.id===t);e==="describing"&&o&&await Ul(o),e==="chosen"&&ws(t),e==="shelf"&&nA(),oA()}function nA(){w_(),ho()}async function oA(){try{await Dt(),Va()}catch(e){if(!(e instanceof w))throw e;f({list_complaint:e.message})}}var vt={id:""},Ye,Mp=!1,Bp=new Map,Kl=JSON.parse(sessionStorage.getItem("left")??"{}");function iw(){let e=ys();Mp||!e||Ye&&Tt(Ye)===Tt(e)||(Jl(),rw(e))}function rw(e){let t=!Ye||Ye.name===e.name&&Ye.of!==void 0&&Ye.of===e.of;if(Ye=e,t)return Zi();vt={id:crypto.randomUUID(),before:location.hash},Bp.set(vt.id,e.of),history.pushState(vt,"",Tt(e)),requestAnimationFrame(rA)}function Zi(){Ye&&(vt.id||(vt={id:crypto.randomUUID()}),Bp.set(vt.id,Ye.of),history.replaceState(vt,"",Tt(Ye)))}var iA="button, input, select, summary, a[href], [tabindex]",Lp=e=>e.id||(e.getAttribute("aria-label")??e.textContent).trim(),sw=e=>[...document.querySelectorAll(`#main :is(${iA})`)].filter(t=>Lp(t)===e);function Jl(){let e=document.activeElement;!e?.closest("#main")||e.id==="main"?Kl[vt.id]={scroll:scrollY}:Kl[vt.id]={scroll:scrollY,words:Lp(e),nth:sw(Lp(e)).indexOf(e)}}function rA(){scrollTo(0,0),document.activeElement?.closest("#main")||aw()}function aw(){let e=document.querySelector("#main h1");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}))}function lw(){let{scroll:e,words:t,nth:n=0}=Kl[vt.id]??{scroll:0},o=t===void 0?void 0:sw(t)[n];o?o.focus({preventScroll:!0}):aw(),scrollTo(0,e)}var Ze=e=>dw({name:e,file:Sn(e)?a.run.file:void 0});async function dw(e){Jl(),await Cp(e,()=>{let t=ys();t&&!(Ye&&Tt(Ye)===Tt(t))&&rw(t)})}async function Cp(e,t){Mp=!0;try{await nw(e)}finally{Mp=!1,t()}}function uw(e){vt.before===Tt(e)?history.back():dw(e)}var ow=Promise.resolve();function sA(e,t){Jl();let n=()=>history.state?.id!==e?.id;ow=ow.then(async()=>{if(!t)return Zi();if(n())return;let o=e?Bp.get(e.id):void 0,i=[a.run,a.formulas.apart,a.order].find(r=>r&&r===o);await Cp(i?{...t,file:"open"in i?i.open.file:i.file}:t,()=>{Ye=ys(),!n()&&(vt=e??{id:crypto.randomUUID()},Zi(),requestAnimationFrame(lw))})})}function cw(){history.scrollRestoration="manual",addEventListener("popstate",e=>{Rf()||sA(e.state,Kd(location.hash))}),addEventListener("pagehide",()=>{Jl(),sessionStorage.setItem("left",JSON.stringify(Kl))})}async function pw(){let e=Kd(location.hash);e&&(vt=history.state??{id:""});let t=De();await E_(Qf(e)),e&&t()&&aA(e)&&await Cp(e,()=>{Ye=ys(),Zi(),requestAnimationFrame(lw)}),await vc()}var aA=e=>!Ye||Tt(Ye)===Tt(e);function ai(e=a.plan?"The figures below are out of date.":"No figures yet."){let t=Sl()?void 0:a.complaint;return s`<div class="complaints" role="status">
      ${t?s`<p class="alarm">
                <strong>${e}</strong>
                ${Jn(t.field)}${B(t)}
              </p>
              ${t.is_fault?s`<button type="button" @click=${Ip}>Ask again</button>`:d}
              ${Mt("run")?_s(a.run.now,t.keep,(n,o)=>Z("run",n,o)):Wp(t)}
              ${lA()?s`<button type="button" @click=${Ep}>Go to the field</button>`:d}`:d}
    </div>
    ${ms()}`}function Wp({keep:e}){let{studio:t}=a.beside;return t&&Mt("studio")?_s(t.now,e,(n,o)=>Z("studio",n,o)):d}function Jn(e){let t=e.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return t.length?`${t.join("").slice(2)}: `:""}function Ip(){se(),a.run.failed&&dn()}function lA(){if(mw())return!0;let e=fn();return e?document.activeElement!==e:dA()}var dA=()=>a.view!=="set-up"&&Mt("run")&&a.complaint!==void 0&&a.complaint.field!=="",mw=()=>["pour","pipe"].find(e=>a.complaint?.file&&a.complaint.field&&Mt(e));function Ep(){let e=fn(),t=mw();if(e)return tt(e);t?at(t):Ze("set-up"),uA(()=>tt(fn()))}function uA(e){requestAnimationFrame(()=>requestAnimationFrame(e))}var fw=()=>[...ba().map(e=>_n(e)),...$a().map($n)];function hw(){let e=a.formula_of,t=a.formulas[e];if(!t)return s`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${fw()}${ai()}
      <p>Reading the formula ...</p>
      ${jp(e)}`;let n=a.plan&&Ji(a.plan),o=e==="pipe"?n?.whippings[0]:n?.pour;return s`${fw()}
    <h1 id="formula-title" tabindex="-1">${String(t.now.name||"Unnamed formula")}</h1>
    <p class="aside">${cA(e)}</p>
    <div class="choice">${jp(e)}${e==="apart"?pA():d}</div>
    ${Vi(a.files?.formulas.find(i=>i.file===t.file))} ${mA(e,o,n)} ${_w(e)}
    ${ap(e)} ${dp(e,o)} ${cp(e)} ${np(e)}
    <div class="choice">${jp(e)}</div>`}var gw=e=>[_w(e),ap(e),dp(e,void 0),cp(e),np(e)],Np=()=>String(a.run.now.name??a.run.file);function cA(e){let t=a.formulas[e],n=t.shipped?" Built-in: your first change is saved as a copy.":"",o=a.formulas.pour===t&&a.formulas.pipe===t;return e==="apart"?`Opened on its own; the figures are for a base of "${Np()}".${n}`:o?`Base and topping of "${Np()}" are both made of it.${n}`:`${e==="pour"?"Base":"Topping"} of "${Np()}".${n}`}function jp(e){let t=e==="apart";return s`<button type="button" class="strong" @click=${()=>uw(t?{name:"formulas"}:{name:a.came_from,file:a.run.file})}>
    ${t?"Close the formula":"Back to the run"}
  </button>`}function pA(){return s`<button type="button" @click=${()=>{kc("pour")}}>Use it as the base</button> ${wt()?s`<button type="button" @click=${()=>{kc("pipe")}}>Use it as the topping</button>`:d}`}function mA(e,t,n){return s`<section class="strip" aria-label="What comes of it">
    ${t&&n?s`<dl>
            ${[...fA(e,n),...hA(e,t)].map(([o,i,r])=>s`<div class=${a.is_old?"old":""}>
                  <dt>${o} ${r?wo(r):d}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:d}
    ${gA(e)}
  </section>`}function fA(e,t){let n=e==="pipe"?Gc(t,t.whippings[0]):"";return n?[["For one whipping",n]]:Ge(t.whole)?[["For one batch",Xt(t.whole,t.batch)]]:[]}function hA(e,t){let n=_o(e).length?" \u26A0":"";return[["Fats",x(H(a.units,t.fats_g))],["Superfat as weighed",`${lt(t.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...kl(t).map(({one:o})=>[o.name,x(si(a.units,o))])]}function gA(e){let t=Sl()?void 0:a.complaint;if(!t)return s`<div role="status"></div>
      ${ms()}`;let n=Mt(e),o=n&&t.field!==""&&document.activeElement!==fn();return s`<div role="status" class="asks">
      <p class="alarm">
        <strong>${a.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${Jn(t.field)}${B(t)}
      </p>
      ${t.is_fault?s`<button type="button" @click=${Ip}>Ask again</button>`:d}
      ${o?s`<button type="button" @click=${()=>fn()?.focus()}>Go to the field</button>`:d}
    </div>
    ${ms()}`}function _w(e){return s`<section class="card" aria-label="Name">
    ${h({label:"Name",of:e,at:"/name",wide:!0})}
    ${F({of:e,name:"note",pointers:["/note"],summary:"Your note",body:()=>h({label:"Note",of:e,at:"/note",optional:!0,wide:!0})})}
  </section>`}var Hp=e=>v(a.new_formula,e);function $w(){let{name:e,copied:t}=a.new_formula,n=[...a.files?.formulas??[]].sort((i,r)=>Number(i.shipped)-Number(r.shipped)),o=i=>()=>pe(async()=>{await i(e.trim()),Hp({name:"",copied:""})});return s`${Bt("Formulas")}
    <section aria-label="Formulas">
      ${en(n,_A)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${P(e)}
            @input=${i=>Hp({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!e.trim()} @click=${o(j_)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>Hp({copied:i.target.value})}
          >
            <option value="" .selected=${P(t==="")}>choose ...</option>
            ${n.map(i=>s`<option value=${i.file} .selected=${P(i.file===t)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!e.trim()||!t}
          @click=${o(i=>H_(t,i))}
        >
          Make the copy
        </button>
      </div>
      ${e.trim()?"":s`<p class="hint">A new formula needs a name first.</p>`}
    </section>
    ${Ct("formula")}`}function _A(e){let t=e.changed?[`changed ${N(e.changed)}`]:[];return bn({kind:Ho,one:e,facts:t,open:()=>Zr(e.file)})}function $A(e){mn(),ws(e,`Saved in ${e}.`)}function bw(){let{chosen_mould:e}=a;return s`${Bt("Moulds")}
  ${e?Xb(e,pe):Yb($A)??s`${vA()} ${bA()}`}`}function bA(){let e=(a.files?.moulds??[]).filter(n=>!n.shipped),t=a.catalogue.map(n=>({file:n.path,name:n.name,note:"",shipped:!0}));return s`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${en([...e,...t],wA)} ${Ct("mould")}
  </section>`}function wA(e){let t=e.shipped?yA(e.file):TA(e.file),n=()=>Promise.resolve(ws(e.file));return bn({kind:it,one:e,facts:t,picture:e.file,open:n})}var yA=e=>a.catalogue.filter(t=>t.path===e).map(t=>`${x(ke(a.units,t.brimful_ml))}, ${z(t.cavities,"cavity","cavities")}; ${t.description}`);function vA(){return s`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${kA()}
    <div class="choice">
      ${Object.entries(ql).map(([e,t])=>s`<button type="button" @click=${()=>Qb(e)}>${t}</button>`)}
    </div>
  </section>`}function kA(){return ya(it).map(e=>{let t=String(ye(e.text)?.name??"").trim()||xA(e)||"a mould without a name yet";return s`<div class="banner">
      <p>Your unsaved mould <b>${t}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>pe(()=>Ul(e))}>Continue</button>
        <button type="button" @click=${()=>{eo(it,e.id),Q()}}>Discard it</button>
      </div>
    </div>`})}var xA=({file:e})=>a.files?.moulds.find(t=>t.file===e)?.name;function TA(e){let t=_c(e);return t?"complaint"in t?[`it cannot be measured: ${t.complaint}`]:[x(ke(a.units,t.brimful_ml)),z(t.cavities,"cavity","cavities")]:["measuring ..."]}var RA=300,SA=1e3;function Vl(){let{quoted:e,plan:t,quote_wish:n,is_old:o}=a,i=e?.of===t&&e?.wish===n;!i&&!o&&AA();let r=i?e?.complaint:void 0;return{quote:e?.quote,complaint:r,is_old:o||!i||r!==void 0}}function Up(){a.quoted&&f({quoted:{...a.quoted,of:void 0}})}var vs,qp=!1;function AA(){let{plan:e,quote_wish:t}=a;qp||vs?.of===e&&vs?.wish===t||(window.clearTimeout(vs?.timer),vs={of:e,wish:t,timer:window.setTimeout(()=>{PA()},a.quoted?RA:0)})}var Ql=e=>e.split(/[\s,;]+|\band\b/).filter(Boolean).join(",");function ww(e,{numbers:t="",by:n,figure:o}){let i=Ql(t);return{...e,...i&&{sell:i},...n&&o.trim()&&{[n]:o}}}var Gl=()=>ww({file:a.run.file,run:a.run.now},a.quote_wish);function DA(e,{numbers:t=""}){return e.field==="/sell"&&Ql(t)?{...e,file:"",field:"sell"}:e}async function PA(){vs=void 0;let{run:e,plan:t,planned:n,quote_wish:o,is_old:i}=a;if(!(!t||!n||i)){qp=!0;try{let r=await Wf(ww(n,o));e===a.run&&f({quoted:{of:t,wish:o,quote:r}})}catch(r){if(!(r instanceof w))throw r;if(e!==a.run)return;let l=DA(r.complaint,o);f({quoted:{of:t,wish:o,quote:a.quoted?.quote,complaint:l}}),r.may_pass&&window.setTimeout(Up,SA)}finally{qp=!1}}}var OA=300,FA=1e3,Kp=e=>{let{by:t,figure:n}=a.quote_wish;return[e.open.now,e.open.file,e.times,t,n,a.plan,Jo(),a.recorded]},yw=(e,t)=>e!==void 0&&e.every((n,o)=>n===t[o]);function Jp(){let e=_e(),{quoted:t}=e;if(!Mn(e.open.now)||e.open.theirs)return{is_old:!0};let n=yw(t?.of,Kp(e));!n&&!a.is_old&&MA(e);let o=n?t?.complaint:void 0;return{quote:t?.quote,complaint:o,is_old:a.is_old||!n||o!==void 0}}function Vp(){let{quoted:e}=_e();e&&v(_e(),{quoted:{...e,of:[]}})}function Qp({open:e,times:t}){let{by:n,figure:o}=a.quote_wish,i=Ql(t);return{file:e.file,order:e.now,...i&&{times:i},...n&&o.trim()&&{[n]:o}}}var Yl,zp=!1;function MA(e){let t=Kp(e);zp||yw(Yl?.of,t)||(window.clearTimeout(Yl?.timer),Yl={of:t,timer:window.setTimeout(()=>{LA(e)},e.quoted?OA:0)})}async function LA(e){if(Yl=void 0,e===a.order){zp=!0;try{if(await rt(),await ht(),await Ti(),await za(),!Mn(e.open.now))return;let t=Kp(e);await BA(e,t)}catch(t){if(!(t instanceof w))throw t}finally{zp=!1,v(e,{})}}}async function BA(e,t){try{v(e,{quoted:{of:t,quote:await If(Qp(e))}})}catch(n){if(!(n instanceof w))throw n;v(e,{quoted:{of:t,quote:e.quoted?.quote,complaint:n.complaint}}),n.may_pass&&window.setTimeout(()=>e===a.order&&Vp(),FA)}}function vw(){let{now:e}=_e().open;return s`<div class="row">
      ${me({of:"order",label:"Pieces that are made already",at:"/ready",answers:[["take","take them first"]],unsaid:"leave them",optional:!0,chosen:e.ready==="take"?"take":""})}
    </div>
    ${Ut(e).map((t,n)=>CA(t.ready,n))}`}function CA(e,t){let n=`/lines/${t}/ready`;if(e===void 0)return s`${W("order",n)}`;let o=Array.isArray(e)?`takes pieces of ${e.length===1?"batch":"batches"} ${e.join(", ")} alone`:e==="take"?"takes pieces that are made already":"leaves them";return s`${W("order",n)}
    <p>
      Line ${t+1} ${o}, whatever the order says.
      <button type="button" @click=${()=>Z("order",n,void 0)}>Line ${t+1}: as the order says</button>
    </p>`}var kw=(e,t)=>Z("order",`/lines/${e}/ready`,t);var Xi={of:"order",at:"/lines",in_order:!0,stays:!0};function xw(){return s`<section class="card" aria-label="The order">
    <div class="row">
      ${h({of:"order",label:"For",at:"/for",optional:!0})}
      ${h({of:"order",label:"Due",at:"/due",date:!0,optional:!0,short:!0})}
      ${h({of:"order",label:"Note",at:"/note",optional:!0})}
    </div>
    <h2>What is ordered</h2>
    ${W("order","/lines")} ${k(Xi).map((e,t)=>WA(t))} ${IA()} ${vw()}
  </section>`}var Tw=()=>(a.files?.runs??[]).filter(({shipped:e})=>!e);function Rw(e){let t=Pn(_e().open.file,e);return a.files?.runs.find(n=>n.file===t)}var Sw=e=>Rw(e)?.name||e;function Aw(e){let t=Ut(_e().open.now).map(({run:n})=>n);return Tw().filter(({file:n})=>n===e||!t.includes(n)).map(n=>[n.file,n.name||n.file])}function WA(e){let{run:t}=Ut(_e().open.now)[e]??{run:""},n=`/lines/${e}`,o=Rw(t)?.pieces,i=t?Sw(t):`line ${e+1}`;return s`<div class="row" id=${E(Xi,e)} role="group" aria-label=${i}>
    ${me({of:"order",label:"Run",at:`${n}/run`,answers:Aw(t),unsaid:"choose ..."})}
    ${h({of:"order",label:"Pieces",at:`${n}/pieces`,count:!0,short:!0,hint:o===void 0?void 0:`The run itself: ${z(o,"piece")}`})}
    ${k(Xi).length>1?h({of:"order",label:"Poured with others",at:`${n}/together`,optional:!0,short:!0,hint:"Lines with one word, such as A, share one base."}):d}
    ${J(Xi,e,i)}
  </div>`}function IA(){let e=Aw();return Tw().length?e.length?s`<div class="row">
    ${me({of:"order",label:k(Xi).length?"Another run":"The run that is ordered",at:"/lines/-",answers:e,unsaid:"choose ...",optional:!0,chosen:"",take:t=>t&&U(Xi,{run:t},Sw(t))})}
  </div>`:s`${d}`:s`<p class="hint">
      An order is of runs of your own, and there is none yet: make one, or copy an example.
    </p>`}async function li(e,t){try{if(Dw(e))return await EA(e,t);if(Na({run:e},t),a.run.file!==e)return await En(e,"record");a.record.run===e&&pn(t),f({view:"record"})}catch(n){if(!(n instanceof w))throw n;D(n.message),f({stock:{...a.stock,told:{of:"",sentences:[n.message]}}})}}var Dw=e=>a.files?.orders.some(t=>t.file===e)??!1;async function EA(e,t){await Nn(e);for(let n of va(_e().open.now)){let{record:o}=await qr({run:e,together:n},t);if(o.batches.some(({begun:i})=>i.id===t))return NA({run:e,together:n},t)}D("No lines of this order are poured from that base any more")}function NA(e,t){Gp(e.run,e.together),Na(e,t),Kr(e),pn(t),Pe({is_led_to:!0})}var Pw=e=>`poured together ${e}`;function Gp(e,t){sessionStorage.setItem(Pw(e),t),f({})}function Ow(e,t){let n=sessionStorage.getItem(Pw(e));return t.find(o=>o===n)??t[0]}async function Fw(e){try{let{trail:t}=await Ka(`batch ${e}`),n=t.batches.find(({batch:o})=>o===e);if(n&&Dw(n.file))return await li(n.file,n.id)}catch(t){if(!(t instanceof w))throw t}Le(`batch ${e}`)}var ks=e=>{let{beginning:t}=a.record;t&&Pe({beginning:{...t,...e}})},Mw=e=>Pe({beginning:{batch:e,act:crypto.randomUUID(),code:"",answers:{}},told:void 0}),Yp=()=>Pe({beginning:void 0}),Lw=e=>ks({code:e,complaint:void 0});async function Zp(e){let{beginning:t,together:n}=a.record;if(!(!t||t.is_asking)){ks({is_asking:!0,complaint:void 0});try{n!==void 0?await rt():a.run.shipped&&await to(a.run),await ht(),await(n===void 0?jA(t,e):HA(t))}catch(o){if(!(o instanceof w))throw o;ks({complaint:o.complaint}),D(`Not begun: ${o.complaint.problem}`)}finally{ks({is_asking:!1})}}}var Bw=({batch:e,code:t,answers:n})=>({batch:e,code:t.trim()||void 0,again:Cn(e)!==void 0,...n});async function jA(e,t){let n=a.run.file,o=Cw(await Zu({run:n,seen:t,...Bw(e)}),{run:n});Ua(o,Qo(e.batch)),await Ln()}async function HA(e){let{run:t,together:n}=a.record,{act:o}=e,i=await Zu({run:t,together:n,act:o,...Bw(e)});a.record.run!==t||a.record.together!==n||pn(Cw(i,{run:t,together:n}).begun.id)}function Cw(e,t){let[n]=e.record.batches;return Pe({...t,beginning:void 0,told:{batch:n.begun.id,remarks:(e.record.remarks??[]).map(o=>o.text)}}),Ea(e,t),D(`The record is begun: ${n.begun.code}`),n}async function Ww(e,t){let{beginning:n}=a.record;if(!n)return;let{answers:o}=n,i=r=>{let l=e[r];return l===void 0?o[r]:[...o[r]??[],l]};ks({answers:{confirmed:i("confirmed"),lot:i("lot"),"beyond-stock":i("beyond-stock")}}),await Zp(t)}var Xp=(e,t)=>Pe({code:{batch:e,text:t}}),Zl=()=>Pe({code:void 0});async function Iw(){let{code:e,run:t,together:n}=a.record;if(!e?.text.trim())return Zl();try{let o=crypto.randomUUID(),i={run:t,together:n};Ea(await Ba({...i,batch:e.batch,act:o,code:e.text.trim()}),i),Zl()}catch(o){if(!(o instanceof w))throw o;Pe({code:{...e,complaint:B(o.complaint)}})}}var xs="batch-code";function er({begun:e,lines:t}){let{code:n}=a.record,o=n?.batch===e.id,i=()=>{Xp(e.id,e.code),C(L(xs))};return s`<div class="batch-code">
    <p>
      <span class="aside">${t.length?"On the pot:":"On the mould:"}</span> <b class="code">${e.code}</b>
    </p>
    ${o?s`<div class="row">
            <div class="field ${n.complaint?"wants":""}">
              <label for=${xs}>Another code</label>
              <input
                id=${xs}
                autocomplete="off"
                .value=${P(n.text)}
                aria-describedby=${n.complaint?`${xs}-said`:d}
                @input=${r=>Xp(e.id,r.target.value)}
              />
            </div>
            <button type="button" class="strong" @click=${()=>{Iw()}}>Use this code</button>
            <button type="button" @click=${Zl}>Leave it</button>
            ${n.complaint?s`<p class="complaint" id="${xs}-said">${n.complaint}</p>`:d}
          </div>`:s`<button type="button" @click=${i}>Change the code</button>`}
  </div>`}function Xl(){let{batches:e}=a.record;if(e.length<2)return d;let t=Bi();return s`<ul
    class="makings"
    aria-label=${a.record.together===void 0?"Batches of this run":"Batches of this base"}
  >
    ${[...e].reverse().map(n=>qA(n,n.begun.id===t?.begun.id))}
  </ul>`}function qA(e,t){let{id:n,code:o}=e.begun,i=qa(n);return s`<li>
    <button type="button" aria-pressed=${t?"true":"false"} @click=${()=>pn(n)}>
      <b>${o}</b> <span>${Ts(e)}</span>
      <small>${tm(e)}; ${z(e.noted,"blank")} noted${i?`; ${i} not taken`:""}</small>
    </button>
  </li>`}function Ts({number:e,begun:t,lines:n}){let{of:o=1}=a.record,i=o>1||e>1?`batch ${e} of ${Math.max(o,e)}, `:"",r=n.length?"":`${z(t.pieces,"piece")}, `;return`${i}${r}begun ${N(t.begun_on)}`}var em=({for_sale:e,not_for_sale_because:t=""})=>e?"For sale":`Not for sale: ${Te(t)}`,tm=e=>e.lines.length?`poured into ${e.lines.map(({code:t})=>t).join(", ")}`:em(e);var nm="begin-title";function Ew(e){let{record:t}=a;if(t.run!==a.run.file||t.version===void 0)return d;let{number:n,since:o}=e,i=o===void 0?void 0:Cn(n,o);return i?UA(i,e):om(e)}function om(e,t="Lye is mixed: begin the record"){let{number:n,is_due:o}=e,{beginning:i}=a.record;return i?.batch===n?zA(i,e):s`<div class="begin-record">
    <button type="button" class=${o?"strong":""} @click=${()=>{Mw(n),C(L(nm)),requestAnimationFrame(()=>document.querySelector(".begin-record.asked")?.scrollIntoView({block:"nearest"}))}}>${t}</button>
  </div>`}function UA(e,{show:t}){let n=()=>{pn(e.begun.id),t()};return s`<div class="begin-record is-begun">
    ${er(e)}
    <button type="button" class="strong" @click=${n}>Note what happens</button>
    ${im(e)}
  </div>`}function im({begun:e}){let{told:t}=a.record;return t?.batch===e.id&&t.remarks.length?s`<ul class="begin-remarks" role="status">
        ${t.remarks.map(n=>s`<li>${n}</li>`)}
      </ul>`:d}function zA(e,t){let{number:n,words:o,seen:i,is_struck:r}=t,l=Cn(n),{complaint:u,is_asking:c}=e,p=i===void 0,m=!r&&!c&&(p||!io(n));return s`<div class="begin-record asked" role="group" aria-labelledby=${nm}>
    <p id=${nm} tabindex="-1"><b>Begin the record of ${o}?</b> Its plan is kept with it as it is weighed.</p>
    ${l?KA(l,t):d}
    <div class="row">
      <div class="field">
        <label for="code-to-begin">${p?"Code on the pot":"Code on the mould"}</label>
        <input
          id="code-to-begin"
          autocomplete="off"
          .value=${P(e.code)}
          aria-describedby="code-to-begin-said"
          @input=${_=>Lw(_.target.value)}
        />
        <p class="hint" id="code-to-begin-said">
          Left blank: the day and the next letter.${p?" Each line gets the same with a number behind.":""}
        </p>
      </div>
      <button type="button" class="strong" ?disabled=${!m} @click=${()=>{Zp(i)}}>
        ${c?"Beginning ...":l?"Begin another making":"Begin the record"}
      </button>
      <button type="button" @click=${Yp}>Not yet</button>
    </div>
    ${r?s`<p class="complaint">The weights are not those of what is typed.</p>`:d}
    ${u?JA(u,i):d}
  </div>`}var KA=(e,{show:t})=>s`<p>
      There is a record of it already, <b>${e.begun.code}</b>: ${tm(e)}. If this is the same soap, go
      on in that one.
    </p>
    <p>
      <button
        type="button"
        @click=${()=>{Yp(),pn(e.begun.id),t()}}
      >
        Go on in ${e.begun.code}
      </button>
    </p>`;function JA(e,t){let n=e.choices??[],o=a.files?.orders.find(({file:i})=>VA(e.file,i))?.file;return s`<div role="alert">
    <p class="alarm">
      ${n.length||e.field==="begin"?`${QA(e.problem)}.`:`${B(e)}.`}
    </p>
    ${o!==void 0&&n.length?s`<button type="button" class="answer" @click=${()=>{Nn(o)}}>To the order</button>`:d}
    ${n.map(i=>s`<button type="button" class="answer" @click=${()=>{Ww(i,t)}}>
          ${GA(i)}
        </button>`)}
  </div>`}var VA=(e,t)=>e===t||e.endsWith(`/${t}`),QA=e=>e[0].toUpperCase()+e.slice(1);function GA(e){let{confirmed:t,lot:n}=e;return t==="by-itself"?"This batch is mixed by itself":e["beyond-stock"]?`There is more than the records say: take it of lot ${e["beyond-stock"]}`:n?`Take ${n}`:`It is so: ${t??""}`}var YA={mass:["g","oz"],temperature:["\xB0C","\xB0F"],minutes:["min"],length:["mm","in"],volume:["ml"]};function Rs({kind:e,unit:t}){let n=YA[e]??[];return t&&n.includes(t)?[t,...n.filter(o=>o!==t)]:n}var Nw="degrees",ZA=()=>localStorage.getItem(Nw)??void 0,jw=e=>localStorage.setItem(Nw,e);function rm(e){return e.kind!=="temperature"?Rs(e)[0]:a.units!=="both"?a.units==="us"?"\xB0F":"\xB0C":ZA()}function Hw(e,t){let n=e.kind==="length"&&t?t.startsWith("-")?"below":"above":void 0,o=n?t.replace(/^[+-]\s*/,""):t,i=Ot(o);return Rs(e).includes(i)?{number:o.slice(0,o.length-i.length).trim(),unit:i,side:n}:{number:o,side:n}}function qw({number:e,unit:t,side:n}){let o=e.trim();if(!o)return"";let i=t&&Oe(o)?`${o} ${t}`:o;return n==="below"&&!/^[+-]/.test(i)?`-${i}`:i}function ed({kind:e},{number:t,unit:n,side:o}){return e==="temperature"&&!n&&Oe(t)?"Is that in \xB0C or in \xB0F?":e==="length"&&o===void 0&&/[1-9]/.test(t)&&!/^\s*[+-]/.test(t)?"Above the line or below it?":void 0}var tn,XA=(e,t)=>`note-${e}-${t.replaceAll(/[^\w]/g,"-")}`;function td(e,t){let n=cn(e.begun.id,t.key),o=XA(e.begun.id,t.key),i=n?.refused!==void 0;return s`<div class="blank ${i?"wants":""}" data-key=${t.key}>
    ${t.kind==="choice"?s`<p class="blank-words" id="${o}-label">${t.words}</p>`:s`<label class="blank-words" for=${o}>${t.words}</label>`}
    <div class="blank-value">${eD(e,t,o,n)}</div>
    <p class="blank-beside">
      ${t.planned?s`<span class="planned">planned <b>${t.planned}</b></span>`:d}
      ${sD(e,t,n)}
    </p>
    ${uD(e,t,o,n)}
  </div>`}function eD(e,t,n,o){if(t.kind==="choice")return rD(e,t,n,o);let i=Uw(e,t,o),r=Rs(t).length>0||t.kind==="count",l=c=>sm(e,t,{...i,number:c.target.value}),u=c=>{ni(c),tD(e,t)};return s`<input
      id=${n}
      type=${t.kind==="date"?"date":"text"}
      inputmode=${t.kind==="count"?"numeric":r?"decimal":d}
      class=${r?"number":""}
      autocomplete="off"
      .value=${P(i.number)}
      aria-invalid=${o?.refused?"true":"false"}
      aria-describedby=${o?.refused||ed(t,i)?`${n}-said`:d}
      @input=${l}
      @blur=${u}
      @keydown=${c=>c.key==="Enter"&&nD(c)}
    />
    ${oD(e,t,i)} ${iD(e,t,i)}`}function Uw({begun:e},t,n){if(tn?.batch===e.id&&tn.key===t.key)return tn.typed;if(n?.lacks)return{number:n.text,unit:t.kind==="temperature"?void 0:rm(t)};let o=Hw(t,n?n.value:t.noted??"");return{...o,unit:o.unit??rm(t)}}function sm(e,t,n,o=!1){tn={batch:e.begun.id,key:t.key,typed:n},zw(e,t,n,o),Q()}function zw(e,t,n,o){let i=ed(t,n)!==void 0;lc(e,{key:t.key,text:n.number,value:qw(n),is_left:o,lacks:i})}function tD(e,t){if(tn?.batch!==e.begun.id||tn.key!==t.key)return;let{typed:n}=tn;tn=void 0,zw(e,t,n,!0),Q()}function nD({target:e}){[...document.querySelectorAll(".blank :is(input, button)")].find(n=>n.compareDocumentPosition(e)&Node.DOCUMENT_POSITION_PRECEDING)?.focus()}function oD(e,t,n){let o=Rs(t);if(t.kind!=="temperature")return o.length?s`<span class="unit">${n.unit??o[0]}</span>`:d;let i=r=>{jw(r),sm(e,t,{...n,unit:r},!0)};return Kw(`Degrees: ${t.words}`,o,n.unit,i)}function iD(e,t,n){if(t.kind!=="length")return d;let o=i=>sm(e,t,{...n,side:i},!0);return Kw(`Side: ${t.words}`,["above","below"],n.side,o)}var Kw=(e,t,n,o)=>s`<div class="choice" role="group" aria-label=${e}>
    ${t.map(i=>s`<button type="button" aria-pressed=${i===n?"true":"false"} @click=${()=>o(i)}>
          ${i}
        </button>`)}
  </div>`;function rD(e,t,n,o){let i=o?o.value:t.noted,r=l=>{fo(e,t.key,l),D(l?`${t.words}: ${l}`:`${t.words}: taken back`)};return s`<div class="choice" role="group" id=${n} aria-labelledby="${n}-label">
    ${(t.choices??[]).map(l=>s`<button type="button" aria-pressed=${l===i?"true":"false"} @click=${()=>r(l)}>
          ${l}
        </button>`)}
    ${i?s`<button type="button" class="plain" @click=${()=>r("")}>Take back</button>`:d}
  </div>`}function sD({begun:e},t,n){if(n?.refused??n?.lacks)return s`<span class="stands not">✗ not noted</span>`;if(n)return s`<span class="stands waiting">… not kept yet</span>`;let o=tn?.batch===e.id&&tn.key===t.key;return t.noted!==void 0&&!(o&&!tn.typed.number.trim())?s`<span class="stands kept">✓ noted ${dD(t.noted_at)}</span>`:d}var aD=new Intl.DateTimeFormat("en-GB",{hour:"2-digit",minute:"2-digit"}),lD=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"short"});function dD(e){if(!e)return"";let t=new Date(e);return(t.toDateString()===new Date().toDateString()?aD:lD).format(t)}function uD(e,t,n,o){if(o?.refused)return am(o,`${n}-said`);let i=ed(t,Uw(e,t,o));return i?s`<p class="complaint" id="${n}-said">${i}</p>`:d}function am(e,t){let{words:n,is_asked:o,noted:i,is_lye:r}=e.refused,l=e.value||"nothing",u=i!==void 0;return s`<div class="blank-said" role="alert">
    <p class=${r?"alarm":"complaint"} id=${t} data-lye=${r?"true":d}>
      ${r?s`<strong aria-hidden="true">⚠</strong> `:d}${/^(is|was|makes|has|cannot) /.test(n)?`It ${n}`:n}.
    </p>
    ${o||u?s`<div class="row">
            ${u?s`<button type="button" @click=${()=>f_(e)}>Keep ${i||"it blank"}</button>`:d}
            <button type="button" @click=${()=>m_(e)}>
              ${u?`Note ${l} in its place`:`It is so: note ${l}`}
            </button>
          </div>`:d}
  </div>`}var Jw="record weights";function Vw(e){let{rows:t=[]}=e;if(!t.length)return d;let n=a.open.has(Jw),o=t.filter(i=>n||i.noted!==void 0||cn(e.begun.id,i.key));return s`<section class="record-part" aria-labelledby="record-weights">
    <h2 id="record-weights" tabindex="-1">Really weighed</h2>
    <p class="aside">Only where it was not what was planned: its lot then loses what was used.</p>
    ${o.map(i=>s`${cD(i,o)} ${td(e,pD(i))}`)}
    <p>
      <button type="button" aria-expanded=${n?"true":"false"} @click=${()=>je("open",Jw)}>
        ${n?"Fold the weights away":"Another weight than planned"}
      </button>
    </p>
  </section>`}var cD=(e,t)=>t.find(({of:n})=>n===e.of)===e?s`<h3>${e.of}</h3>`:d,pD=e=>({...e,kind:"mass",when:"base_mixed"});var Ss;function mD(){let e=new Date;return[e.getFullYear(),e.getMonth()+1,e.getDate()].map(t=>String(t).padStart(2,"0")).join("-")}var dm=e=>`cured.${e}`;function Qw(e,t){let{id:n}=e.begun,o=Ss?.batch===n?Ss:{batch:n,day:mD(),pieces:"",weight:""},i=e.cured??[],r=i.find(({on:u})=>u===o.day),l=o.day!==""&&o.pieces.trim()!==""&&o.weight.trim()!=="";return s`<div class="blank cure" data-key=${t.key}>
    <p class="blank-words">
      Weighed while it cures ${t.planned?s`<small>planned, cured: ${t.planned}</small>`:d}
    </p>
    ${hD(n).map(gD)}
    ${i.length?s`<ul class="weighings">
            ${i.map(u=>$D(e,u))}
          </ul>`:s`<p class="aside">None noted yet.</p>`}
    <div class="row">
      ${lm("Day","cure-day","date",o.day,u=>({...o,day:u}))}
      ${lm("Pieces","cure-pieces","numeric",o.pieces,u=>({...o,pieces:u}))}
      ${lm(`Weight together, ${t.unit??"g"}`,"cure-weight","decimal",o.weight,u=>({...o,weight:u}))}
      <button type="button" ?disabled=${!l} @click=${()=>fD(e,t,o)}>
        ${r?"Put it in its place":"Note this weighing"}
      </button>
    </div>
    ${r?s`<p class="hint">Noted of ${N(r.on)} already: ${ja(r)}.</p>`:d}
  </div>`}var lm=(e,t,n,o,i)=>s`<div class="field short">
    <label for=${t}>${e}</label>
    <input
      id=${t}
      type=${n==="date"?"date":"text"}
      inputmode=${n==="date"?d:n}
      autocomplete="off"
      .value=${P(o)}
      @input=${r=>{Ss=i(r.target.value),Q()}}
    />
  </div>`;function fD(e,{unit:t="g"},n){let o=Oe(n.weight)?`${n.weight.trim()} ${t}`:n.weight.trim(),i=n.pieces.trim(),r=`${i} ${i==="1"?"piece":"pieces"}, ${o}`;fo(e,dm(n.day),r),D(`Weighing of ${N(n.day)}: ${r}`),Ss=void 0,Q(),C(L("cure-pieces"))}var hD=e=>a.record.acts.filter(t=>t.batch===e&&t.key.startsWith("cured.")),gD=e=>{let t=N(e.key.slice(6));return e.refused?s`<p><b>${t}</b> <span class="stands not">✗ not noted</span></p>
        ${am(e,`said-${e.id}`)}
        <div class="row"><button type="button" @click=${()=>_D(e)}>Correct it</button></div>`:s`<p><b>${t}</b>: ${e.value||"taken back"} <span class="stands waiting">… not kept yet</span></p>`};function _D({batch:e,key:t,value:n}){let[,o="",i=""]=/^\s*(\S+) pieces?, (.*)$/.exec(n)??[];Ss={batch:e,day:t.slice(6),pieces:o,weight:i},Q(),C(L("cure-pieces"))}function $D(e,t){let n=cn(e.begun.id,dm(t.on));return s`<li>
    <span><b>${N(t.on)}</b>: ${ja(t)} <span class="stands kept">✓ noted</span></span>
    ${n?d:s`<button
            type="button"
            aria-label="Take back the weighing of ${N(t.on)}"
            @click=${()=>fo(e,dm(t.on),"")}
          >
            Take back
          </button>`}
  </li>`}function Gw(e,t){let{number:n,begun:o}=e,i=a.bench.run===a.record.run?oo(n):void 0,r=i&&new Date(i.begun_at)<=new Date(o.begun_at)?Qo(n):"";return!r||Ha(e,t.key)||cn(o.id,t.key)?d:s`<p class="read-at-weights">
    <button type="button" @click=${()=>fo(e,t.key,r)}>
      Note ${r}, as read at the weights
    </button>
  </p>`}function Yw({to_weights:e,to_learned:t}){mo();let n=Bi();return s`<section class="record" aria-labelledby="run-title">
    <h1 id="run-title" tabindex="-1">${a.plan?.run??String(a.run.now.name??"")}</h1>
    ${a.record.batches.length?s`<p><button type="button" @click=${t}>What your batches say</button></p>`:d}
    ${pm()} ${Xl()} ${n?wD(n):bD(e)}
  </section>`}function pm(){let{failed:e,unsent:t,acts:n}=a.record,o=t!==void 0&&n.some(i=>!i.refused);return s`<div role="status">
    ${e!==void 0?s`<p class="alarm"><strong>What is recorded could not be read:</strong> ${e}.</p>`:d}
    ${o?s`<p class="alarm">
            <strong>Not kept yet:</strong> ${t}. What you type is kept in this browser, and sent as soon as the
            program answers.
          </p>`:d}
  </div>`}function bD(e){return a.record.version===void 0?s`<p class="hint">${a.record.failed===void 0?"Reading ...":""}</p>`:s`<p>No batch of this run is recorded yet. Its record begins when its lye is mixed, at the weights.</p>
    <p><button type="button" class="strong" @click=${e}>To the weights</button></p>`}function wD(e){return s`<div class="record-head">
      ${er(e)}
      <p>${Ts(e)}</p>
      <p class="sale ${e.for_sale?"is":""}">
        <span aria-hidden="true">${e.for_sale?"\u2713":"\u2717"}</span> <b>${em(e)}</b>
      </p>
      ${yD(e)}
      ${nd()?s`<button type="button" @click=${()=>Le(`batch ${e.begun.code}`)}>What is in it</button>`:d}
    </div>
    ${mm(e)}`}function mm(e){let{blanks:t,as_weighed:n=[]}=e;return s`${n.map(({severity:o,text:i})=>s`<p class=${o==="danger"?"alarm":"aside"}>
        ${o==="danger"?s`<strong aria-hidden="true">⚠</strong> `:d}${i}
      </p>`)}
  ${t?TD(e,t):s`<p class="hint">Reading ...</p>`}`}function yD({poured_from:e}){if(e===null)return d;let t=s`Poured from the base <b>${e}</b>`;return nd()&&a.files?.orders.length?s`<button type="button" @click=${()=>{Fw(e)}}>${t}</button>`:s`<p>${t}</p>`}var nd=()=>!a.record.run.includes("/"),vD={day_before:"Cast beforehand",base_mixed:"Mixing",poured:"Pouring",topping_mixed:"Mixing",whipped:"Whipping",piped:"Piping",afterwards:"Pieces and time"},kD="unmoulded_on",um="Cure and test";function xD(e){let t=[];for(let n of e){let o=t.at(-1),r=n.key===kD||o?.title===um?um:vD[n.when],l=n.of??"";o?.title===r&&o.of===l?o.blanks.push(n):t.push({title:r,of:l,blanks:[n]})}return t}function TD(e,t){let n=xD(t),o=s`<nav class="parts-of-record" aria-label="Parts of the record">
    ${n.map((i,r)=>s`<button type="button" @click=${()=>RD(r)}>${Zw(i)}</button>`)}
  </nav>`;return s`${n.length>1?o:d} ${n.map((i,r)=>SD(e,i,r))} ${Vw(e)}`}var Zw=({title:e,of:t})=>t?`${e}: ${t}`:e,cm=e=>`record-part-${e}`;function RD(e){let t=document.getElementById(cm(e));t?.focus({preventScroll:!0}),t?.scrollIntoView({block:"start"})}var SD=(e,t,n)=>s`<section class="record-part" aria-labelledby=${cm(n)}>
    <h2 id=${cm(n)} tabindex="-1">${Zw(t)}</h2>
    ${t.title===um?AD(e):d} ${t.blanks.map(o=>DD(e,o))}
  </section>`,AD=({for_sale:e})=>e?d:s`<p class="aside">
        Nothing is for sale without a test: note how it was tested and what came of it, then the day from which it is
        ready, or why it is held back.
      </p>`,DD=(e,t)=>t.kind==="weighing"?Qw(e,t):s`${td(e,t)} ${dc(t)?Gw(e,t):d}`;var fm="base-title";function Xw({order:e,words:t,planned:n,is_old:o}){let i=Ow(e,t);Kr({run:e,together:i}),OD();let r=Bi();return s`<section class="record of-base out" aria-labelledby=${fm}>
    <h2 id=${fm} tabindex="-1">What really happened: poured together (${i})</h2>
    <p class="aside">
      One base is mixed for these lines, and recorded as a whole. What becomes of their pieces is noted with each run.
    </p>
    ${t.length>1?FD(e,t,i):d} ${pm()}
    ${a.record.version===void 0?PD():s`${MD(n(i),o)} ${Xl()}`}
    ${r?BD(r):d}
  </section>`}var PD=()=>a.record.failed===void 0?s`<p class="hint">Reading ...</p>`:d;function OD(){a.record.is_led_to&&requestAnimationFrame(()=>{Pe({is_led_to:void 0}),C(L(fm))})}var FD=(e,t,n)=>s`<div class="choice" role="group" aria-label="Poured together">
    ${t.map(o=>s`<button
          type="button"
          aria-pressed=${o===n?"true":"false"}
          @click=${()=>Gp(e,o)}
        >
          ${o}
        </button>`)}
  </div>`;function MD(e,t){return e?e.length?s`<ul class="to-begin">
    ${[...e].sort((n,o)=>n.number-o.number).map(n=>LD(n,e.length,t))}
  </ul>`:s`<p class="aside">Fewer than two of these lines are left to make.</p>`:s`<p class="hint">Which batches there are to begin is known once the order is costed as made once.</p>`}function LD({number:e,lines:t},n,o){let i=n>1?`batch ${e} of ${n}`:"the base",r=Cn(e),l=()=>C(L("base-head"));return s`<li>
    <p><b>${i[0].toUpperCase()}${i.slice(1)}</b>, for ${t.join(", ")}${r?d:": not begun"}</p>
    ${om({number:e,words:i,is_struck:o,show:l},r?s`Another making than <b>${r.begun.code}</b>`:"Lye is mixed: begin the record")}
  </li>`}function BD(e){let{begun:t,lines:n}=e;return s`<div class="record-head" id="base-head" tabindex="-1">
      ${er(e)}
      <p>${Ts(e)}</p>
      ${nd()?s`<button type="button" @click=${()=>Le(`batch ${t.code}`)}>What is in it</button>`:d}
    </div>
    ${im(e)}
    <h3>Poured from it</h3>
    <ul class="poured-lines">
      ${n.map(CD)}
    </ul>
    ${mm(e)}`}function CD({id:e,code:t,run:n,file:o,pieces:i}){let{run:r}=a.record,l=r.slice(0,r.lastIndexOf("/")+1)+o,u=a.files?.runs.some(c=>c.file===l);return s`<li>
    <span><b>${t}</b> ${n}, ${z(i,"piece")}</span>
    ${u?s`<button type="button" aria-label="Its record: ${t}" @click=${()=>{li(l,e)}}>
            Its record
          </button>`:d}
  </li>`}var WD=300,ID=1e3,ey=()=>new Date().toDateString(),ED=()=>({file:a.run.file,run:a.run.now});function ND(){let{run:e,plan:t}=a;return{known:a.run_days,rests_on:()=>[a.plan,ey()],is_ready:t!==void 0&&!a.is_old,written:()=>Promise.resolve(),question:()=>a.planned??ED(),is_open:()=>e===a.run,keep:n=>f({run_days:n})}}function jD(){let{order:e}=a;if(!e)return;let{open:t}=e;return{known:e.days,rests_on:()=>[t.now,t.file,a.plan,Jo(),a.recorded,ey()],is_ready:Mn(t.now)&&!t.theirs&&!a.is_old,written:async()=>{await rt(),await ht(),await Ti(),await za()},question:()=>({file:t.file,order:t.now}),is_open:()=>e===a.order,keep:n=>v(e,{days:n})}}var od=e=>e==="run"?ND():jD(),ty=e=>od(e).question(),ny=(e,t)=>e!==void 0&&e.length===t.length&&e.every((n,o)=>n===t[o]);function tr(e){let t=od(e);if(!t)return{is_old:!0};let{known:n,is_ready:o}=t,i=ny(n?.of,t.rests_on());!i&&o&&HD(e,t);let r=i?n?.complaint:void 0;return{days:n?.days,complaint:r,is_old:!o||!i||r!==void 0}}function _m(e){let t=od(e);t?.known&&t.keep({...t.known,of:[]})}var hm=new Map,gm=new Set;function HD(e,t){let n=t.rests_on(),o=hm.get(e);gm.has(e)||ny(o?.of,n)||(window.clearTimeout(o?.timer),hm.set(e,{of:n,timer:window.setTimeout(()=>{qD(e)},t.known?WD:0)}))}async function qD(e){hm.delete(e);let t=od(e);if(t?.is_ready){gm.add(e);try{await t.written(),await UD(e,t)}catch(n){if(!(n instanceof w))throw n}finally{gm.delete(e),f({})}}}async function UD(e,{known:t,rests_on:n,question:o,is_open:i,keep:r}){let l=n();try{let u=await Ef(o());i()&&r({of:l,days:u})}catch(u){if(!(u instanceof w))throw u;if(!i())return;r({of:l,days:t?.days,complaint:u.complaint}),u.may_pass&&window.setTimeout(()=>i()&&_m(e),ID)}}var vm=864e5,To=e=>Math.round(Date.parse(`${e}T00:00Z`)/vm),oy=e=>new Date(e*vm).toISOString().slice(0,10),zD=e=>new Date(e*vm).getUTCDay()===1,bm=40,wm=18,KD=7,ym=class{#n;#e;constructor({calendar:t}){this.#n=To(t[0].day),this.#e=t.length}at=(t,n=0)=>`${this.#t(To(t)+n)}%`;wide=t=>`${(100*t/this.#e).toFixed(3)}%`;#t=t=>(100*(t-this.#n)/this.#e).toFixed(3);mondays(){let t=Array.from({length:this.#e},(n,o)=>this.#n+o).filter(zD);return t.filter((n,o)=>o%Math.ceil(t.length/KD)===0).map(oy)}is_at_end=t=>To(t)-this.#n>.88*this.#e};function iy(e){let t=new ym(e),{calendar:n}=e;return s`<figure class="day-strip">
    <p class="aside">${xe(n[0].day)} to ${xe(n.at(-1).day)}</p>
    ${$m(e,t,20,GD(t))}
    <p>Hours of your making days</p>
    ${$m(e,t,bm+2,YD(e,t))}
    ${e.batches.map(o=>s`<p>${nP(e,o)}</p>
          ${$m(e,t,wm+6,ZD(e,t,o))}`)}
    <figcaption>${iP(e)}</figcaption>
  </figure>`}var $m=(e,t,n,o)=>s`<svg width="100%" height=${n} aria-hidden="true">
    ${R`${JD} ${QD(e,t)}
      ${t.mondays().map(i=>R`<line class="week" x1=${t.at(i)} x2=${t.at(i)} y1="0" y2="100%" />`)}
      ${o}
      ${VD(e).map(i=>R`<line class="due" x1=${t.at(i)} x2=${t.at(i)} y1="0" y2="100%" />`)}`}
  </svg>`,JD=R`<defs>
  <pattern id="day-mould" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M0 0L8 8M8 0L0 8" /></pattern>
  <pattern id="day-cure" width="6" height="6" patternUnits="userSpaceOnUse"><circle cx="3" cy="3" r="1" /></pattern>
  <pattern id="day-off" width="7" height="7" patternUnits="userSpaceOnUse"><path d="M0 7L7 0" /></pattern>
</defs>`,VD=({days:e})=>e.filter(({acts:t})=>t.some(({act:n})=>n==="due")).map(({day:t})=>t),QD=({calendar:e},t)=>e.filter(({off:n})=>n).map(({day:n})=>R`<rect class="off" x=${t.at(n)} width=${t.wide(1)} height="100%" />`),GD=e=>e.mondays().filter(t=>!e.is_at_end(t)).map((t,n)=>R`<text class=${n%2?"between":""} x=${e.at(t)} dx="3" y="14">${_$(t)}</text>`);function YD({calendar:e},t){let n=Math.max(...e.map(({hours_min:i})=>i)),o=(i,r,l)=>{let u=bm*l/n;return R`<rect class=${i} x=${t.at(r,.1)} width=${t.wide(.8)} y=${1+bm-u} height=${u} />`};return e.filter(({hours_min:i})=>i>0).map(({day:i,hours_min:r,used_min:l})=>R`${o("free",i,r)} ${o("used",i,l)}`)}function ZD(e,t,n){let{poured:o,unmoulded:i,cured:r}=n,l=(p,m,_)=>{let b=To(_)-To(m);return R`<rect class=${p} x=${t.at(m)} y="3" width=${t.wide(b)} height=${wm} />`},u=o===i,c=(p,m)=>tP(e,p,n).map(_=>R`<circle class=${p} cx=${t.at(_,.5)} cy=${3+wm/2} r=${m} />`);return R`${l("mould",o,u?oy(To(o)+1):i)}
    ${To(i)<To(r)?l("cure",i,r):d}
    ${c("chill",7)} ${c("cast",3.5)}`}var XD=({of:e,runs:t,batches:n},o)=>e===o.of&&t.join()===o.runs.join()&&n.includes(o.batch),eP=({lyes:e},t)=>e.filter(({batches:n})=>n.some(({of:o,runs:i,batch:r})=>o===t.of&&i.join()===t.runs.join()&&r===t.batch)).map(({made:n})=>n);function tP(e,t,n){let o=e.days.filter(({acts:i})=>i.some(r=>r.act===t&&XD(r,n)));return[...new Set([...o.map(({day:i})=>i),...t==="chill"?eP(e,n):[]])]}function nP({asked:e,batches:t},n){let o=({of:l,runs:u})=>l===n.of&&u.join()===n.runs.join(),i=e[n.of].lines.find(({runs:l})=>l.join()===n.runs.join())?.name??"",r=t.filter(o).length;return`${i}${r>1?`, batch ${n.batch} of ${r}`:""}: ${n.pieces} ${n.pieces===1?"piece":"pieces"}`}var oP=(e,t)=>s`<span><svg width="26" height="20" aria-hidden="true">${e}</svg> ${t}</span>`,As=e=>R`<rect class=${e} x="1" y="1" width="24" height="18" />`;function iP({calendar:e,days:t}){let n=i=>t.some(({acts:r})=>r.some(({act:l})=>l===i));return[[!0,As("used"),"hours used"],[!0,As("free"),"hours free"],[!0,As("mould"),"in the mould"],[!0,As("cure"),"curing"],[e.some(({off:i})=>i),As("off"),"day off"],[n("cast"),R`<circle class="cast" cx="13" cy="10" r="3.5" />`,"decorations cast"],[n("chill"),R`<circle class="chill" cx="13" cy="10" r="7" />`,"weighed out the evening before"],[!0,R`<line class="due" x1="13" x2="13" y1="0" y2="100%" />`,"ready to hand over"]].filter(([i])=>i).map(([,i,r])=>oP(i,r))}var di=e=>["/work",e].join("/");function id(e=!1){let t=(n,o,i,r=!1)=>h({of:"studio",label:o,at:di(n),unit:i,optional:!0,takes_part:!0,is_due:r,short:!0});return[t("each_batch","Each batch","min",e),t("each_piece_made","Each piece made","s"),t("each_tray_fill","Each tray fill","min"),t("each_piece_packed","Each piece packed","s")]}var rP=({cautions:e})=>e.filter(({severity:t})=>t!=="danger").map(({severity:t,text:n})=>t==="note"?s`<p>${Te(n)}</p>`:s`<p class="minded"><strong>Caution</strong> ${Te(n)}</p>`),Ds=(e,t,n="")=>s`<tr>
    <th scope="row">${e}</th>
    <td><b>${x(t)}</b></td>
    <td>${n}</td>
  </tr>`;function sP(e){let{units:t}=a,{made:n,for:o,lye_of:i,pot:r}=e,l=r.full_pot_g===null?"":`with its pot ${x(X(t,{g:r.full_pot_g,g_text:r.full_pot_g_text,oz_text:r.full_pot_oz_text}))}`;return s`<h3>One pot of lye solution, made on the evening of ${xe(n)}</h3>
    <p>
      For ${i==="topping"?"the toppings of ":""}${Te(o)};
      ${S(r.strength_percent,1)} % strong. In place of the lye in the plan of each.
    </p>
    <table class="figures">
      <tbody>
        ${Ds("Water, distilled",X(t,ae(r,"water_")))}
        ${r.alkalis.map(u=>Ds(u.name,X(t,ae(u,""),"down")))}
        ${Ds("Lye solution in the pot",X(t,ae(r,"lye_")),l)}
        ${r.shares.map(u=>s`${Ds(`Out of it for ${u.batter}`,X(t,ae(u,"lye_"),"down"),`superfat then ${lt(u.superfat_percent)}`)}
            ${u.top_up_g>0?Ds(`and plain water to ${u.batter}`,X(t,ae(u,"top_up_"))):d}`)}
      </tbody>
    </table>
    ${rP(e)}`}var ry=({lyes:e})=>e.map(sP),sy=({lyes:e,notes:t})=>[...new Set([...e.flatMap(({cautions:n})=>n),...t].filter(({severity:n})=>n==="danger").map(({text:n})=>n))];var ui,Ps="",aP=2**20,ay=e=>ui?.of===e.file?{...e,since:{name:ui.name,text:ui.text}}:e;function ly(e){let t=async n=>{let o=n.target;await dP(e,o.files?.[0]),o.value=""};return s`<div class="earlier-calendar">
    <div class="field">
      <label for="earlier-calendar">The calendar that you exported before (.ics)</label>
      <input
        id="earlier-calendar"
        type="file"
        accept=".ics,text/calendar"
        aria-describedby="earlier-calendar-said"
        @change=${n=>{t(n)}}
      />
      <p id="earlier-calendar-said" class=${Ps?"complaint":"hint"}>
        ${Ps||"Choose it, if there is one: what it has and the days have no more then goes from your calendar too."}
      </p>
    </div>
    ${ui?.of===e?lP(ui):d}
  </div>`}var lP=({name:e})=>s`<p role="status">
    The calendar file will cancel what only <b>${e}</b> has.
    <button type="button" @click=${()=>uP(e)}>Leave ${e} out</button>
  </p>`;async function dP(e,t){t&&(Ps=t.size>aP?`${t.name} is too large for a calendar of this program.`:"",ui=Ps?void 0:{of:e,name:t.name,text:await t.text()},D(Ps||`${t.name} is taken into account.`))}function uP(e){ui=void 0,D(`${e} is left out.`),Q()}var ci=e=>v(a.printing,e);function dy(e,t){let n=document.createElement("a");n.href=e,t(n),n.click()}async function uy(e){if(!a.printing.is_working){ci({is_working:!0,told:"Making it ...",on:a.view});try{await cP(),ci({told:await e()})}catch(t){ci({told:t instanceof Error?t.message:String(t)})}ci({is_working:!1})}}async function cP(){await rt(),await ht();let e=a.view==="order"?a.order?.open:void 0,t=Fn("run")??(e?.theirs&&e);if(t)throw new Error(`${t.file} was changed outside this page: choose first which version to keep.`)}var yn=()=>a.printing.on===a.view?a.printing.told:"",qe=(e,t)=>()=>uy(async()=>{let n=URL.createObjectURL(await sn(t));return dy(n,o=>o.download=e),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${e} is in your downloads.`}),rd=e=>()=>uy(async()=>(dy(await Uf(e),t=>Object.assign(t,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),pP=e=>{ci({paper:e}),localStorage.setItem("paper",e)},sd=()=>ce("Paper",a.printing.paper,[["A4","A4"],["Letter","Letter"]],pP),Me=(e,t,n="",o=!1)=>s`<button
    type="button"
    class=${n}
    ?disabled=${a.printing.is_working||o}
    @click=${()=>{t()}}
  >
    ${e}
  </button>`,vn=({words:e,kind:t,file:n,of:o,is_asleep:i},r="")=>s`${Me(`${e}, to print`,rd({kind:t,...o}),r,i)}
  ${a.files?.makes_pdf?Me(`${e}, PDF`,qe(`${n}.pdf`,{kind:`${t}-pdf`,...o}),"",i):""}`,kn=e=>e.split("/").at(-1).replace(/(\.(run|order))?\.json$/,"");var xn={run:"/money/currency",studio:"/currency"},ad={run:"/money/prices",studio:"/prices"},nn=()=>hn(xn)!==void 0;function nr(){let[e,t]=[g("run",xn.run),g("studio",xn.studio)];return e!==void 0&&t!==void 0&&e!==t?[]:[xn,ad]}var ld=()=>O("studio",xn.studio)||String(hn(xn)??"");async function cy(e,t=""){if(e==="run"||!a.order)return;let{open:n}=a.order,o=Ut(n.now).map(({run:r})=>Pn(n.file,r)),i=o.find(r=>dd(r,t))??o[0];(!o.includes(a.run.file)||o.some(r=>dd(r,t)))&&await En(i,"set-up")}var dd=(e,t)=>e!==""&&(e===t||t.endsWith(`/${e}`)),py=e=>{requestAnimationFrame(()=>requestAnimationFrame(e))};function Os(e,t){for(let n=t;n;n=n.slice(0,n.lastIndexOf("/"))){let o=document.getElementById(Y(e,n));if(o)return o}}var my=(e,t)=>{ue("set-up studio"),Qe("studio",e),Ze("set-up"),py(()=>tt(Os("studio",t)))};async function fy(e){await cy(e),le()||await Da(),my("days","/days/making/monday")}var mP=["order","run","pour","pipe","studio"];async function ud(e,{file:t,field:n}){if(e==="order"&&dd(a.order.open.file,t))return tt(Os("order",n));await cy(e,t);let o=mP.find(i=>dd(ao(i)?.file??"",t));if(o==="pour"||o==="pipe")at(o);else{if(o==="studio")return my(n.startsWith("/work")&&nn()?"money work":"days",n);if(Os("run",n))return tt(Os("run",n));Ze("set-up")}py(()=>tt(Os(o??"run",n)))}function cd(e){let{days:t,complaint:n,is_old:o}=tr(e);return s`<section class="piece days" aria-labelledby="days-title">
    <h2 id="days-title">When it is made</h2>
    ${n?fP(e,n):d}
    ${t?s`<div class=${o?"old":""}>${hP(e,t)}</div>
            ${SP(e,o)}`:n?d:s`<p class="hint" role="status">Asking when it is made ...</p>`}
  </section>`}function fP(e,t){let{field:n,is_fault:o}=t;return o?s`<p class="alarm" role="status">${B(t)}</p>
      <button type="button" @click=${()=>_m(e)}>Ask again</button>`:["/days","/days/making"].includes(n)||e==="run"&&!le()?s`<p role="status">
        Your making days are not known yet: say on which weekdays you make soap, and for how long.
      </p>
      <button type="button" class="strong" @click=${()=>{fy(e)}}>To my making days</button>`:["/work",di("each_batch")].includes(n)?s`<p role="status">
        How long a batch takes you is not known yet, and so not how many of them a day holds.
      </p>
      <button
        type="button"
        class="strong"
        @click=${()=>{ud(e,{...t,field:di("each_batch")})}}
      >
        To the time of a batch
      </button>`:s`<p class="alarm" role="status">${Jn(n)}${Te(B(t))}</p>
    ${n?s`<button type="button" @click=${()=>{ud(e,t)}}>Go to the field</button>`:d}`}var hP=(e,t)=>s`${TP(t)} ${_P(e,t)} ${gP(t)} ${iy(t)} ${wP(e,t)}
  ${ry(t)} ${kP(t)} ${xP(t)} ${RP(e,t)}`,gP=({asked:e})=>e.flatMap(({ready:t})=>(t?.lines??[]).filter(({text:n})=>n).map(({text:n})=>s`<p><b>${n}</b></p>`)),km=(e,t,n)=>s`<small>${e?t:n}</small>`;function _P(e,t){let{kept:n,promise:o,promise_proved:i,from:r}=t;return n===null?s`<p class="when">
        Begun today, ${xe(r)}, promise it for <b>${xe(o)}</b>.
        ${km(i,"No earlier day can be kept.","The search ended here: an earlier day may be possible.")}
      </p>
      <button type="button" @click=${()=>tt(document.getElementById(Y(e,"/due")))}>
        Give it a due day
      </button>`:n?$P(t):bP(t)}function $P({asked:e,latest_start:t,latest_start_proved:n,promise:o,promise_proved:i}){let[{due:r,pieces:l,last_making_day:u}]=e;return s`<p class="when">
      Begin on <b>${xe(t)}</b> at the latest to have ${z(l,"piece")} by
      <b>${xe(r)}</b>.
      ${km(n,"A later start does not keep it.","The search ended here: a later start may be possible.")}
    </p>
    ${u?s`<p>The last day to pour any of it is ${xe(u)}.</p>`:d}
    <p>
      Begun today, all of it can be ready by ${xe(o)}.
      ${i?d:s`<small>The search ended here: an earlier day may be possible.</small>`}
    </p>`}function bP({asked:e,in_time_proved:t}){let n=({pieces:o,in_time:i,due:r,rest_on:l})=>i?s`${i} of ${z(o,"piece")} by ${xe(r)}, the rest on <b>${xe(l)}</b>.`:s`none of the ${z(o,"piece")} by ${xe(r)}, all of them on <b>${xe(l)}</b>.`;return s`${e.filter(({kept:o})=>o===!1).map(o=>s`<p class="alarm when">
            <strong><span aria-hidden="true">⚠</span> The due day cannot be kept:</strong> ${n(o)}
          </p>`)}
    <p>
      ${km(t,"No more can be in time, and the rest is ready no earlier.","The search ended here: more may be possible.")}
    </p>`}var wP=(e,{days:t})=>s`<details ?open=${e==="run"}>
    <summary>Day by day</summary>
    <ol class="by-day">
      ${t.map(n=>s`<li>
            <h3>${xe(n.day)} <small>${yP(n)}</small></h3>
            <ul>
              ${n.acts.map(vP)}
            </ul>
          </li>`)}
    </ol>
  </details>`,yP=({hours_min:e,used_min:t,off:n})=>n?"day off":e&&t?`${ll(t)} of ${ll(e)}`:"",vP=({text:e,min:t,caution:n})=>s`<li>
    ${Te(e)}${t?s` <small>${ll(t)}</small>`:d}
    ${n?s`<p class="minded"><strong>Caution</strong> ${n}</p>`:d}
  </li>`;function kP({what_if:e,kept:t}){if(!e.length)return s`<h3>What sets the date</h3>
      <p>No wider limit that was tried makes it earlier: the time to cure and to pack does.</p>`;let n=({keeps_due:o,latest_start:i,promise:r,proved:l})=>[o&&!t?"keeps the due day, ":"",o?`begin on ${xe(i)} at the latest`:`ready by ${xe(r)}`,l?"":" (the search ended there)"].join("");return s`<h3>${t===!1?"What would help":"What limits it"}</h3>
    <p class="hint">Each was planned with that change alone.</p>
    <ul class="limits">
      ${e.map(o=>s`<li>${o.text}: <b>${n(o)}</b></li>`)}
    </ul>`}function xP({extras:e}){return e.length?s`<h3>From base that is left over</h3>
    <p class="hint">Not counted above.</p>
    <ul class="limits">
      ${e.map(({run:t,batch:n,mould:o,cavities:i})=>s`<li>Batch ${n} of ${t} fills ${z(i,"cavity","cavities")} of ${o}</li>`)}
    </ul>`:d}function TP(e){let t=sy(e);return t.length?s`<div class="dangers">
    ${t.map(n=>s`<p class="danger"><strong>${_t}</strong> ${Te(n)}</p>`)}
  </div>`:d}function RP(e,{notes:t,studio:n}){let o=t.filter(({severity:l})=>l!=="danger"),i=({severity:l,text:u})=>l==="note"?s`<p>${Te(u)}</p>`:s`<p class="minded"><strong>Caution</strong> ${Te(u)}</p>`,r=({field:l})=>l?s`<button type="button" @click=${()=>{ud(e,{file:n,field:l})}}>Say it</button>`:d;return o.length?s`<h3>To mind</h3>
        ${o.map(l=>s`<div class="day-note">${i(l)} ${r(l)}</div>`)}`:d}function SP(e,t){let n=ty(e),o=kn(n.file),i={plan:n,paper:a.printing.paper,"with-days":!0};return s`<section class="on-paper" aria-labelledby="days-papers">
    <h3 id="days-papers">In a calendar, on paper</h3>
    <div class="choice">
      ${Me("Calendar file (.ics)",qe(`${o} days.ics`,{kind:"calendar",days:ay(n)}),"",t)}
      ${vn({words:"Days and bench sheet",kind:"sheet",file:`${o} days and sheet`,of:i,is_asleep:t})}
      ${Me("Table of the days (.csv)",qe(`${o} days.csv`,{kind:"days-csv",days:n}),"",t)}
    </div>
    <p class="hint">Taken into a calendar again, its entries move with the days.</p>
    ${ly(n.file)}
    <p role="status">${yn()}</p>
  </section>`}var Ro=e=>(t,n,o="")=>s`<tr class=${o}>
      <th scope="row">${t}</th>
      ${e.map(i=>s`<td><b>${n(i)}</b></td>`)}
    </tr>`,Fs=(e,t)=>s`<tr class="group">
    <th scope="rowgroup" colspan=${t.length+1}>${e}</th>
  </tr>`;function Ms(e,t,n,o){let i=`quote ${t}`,r=a.open.has(i),l=`quote-${t.replaceAll(/\W/g,"-")}`,u=s`<button
    type="button"
    class="line"
    aria-expanded=${r?"true":"false"}
    aria-controls=${r?l:d}
    @click=${()=>je("open",i)}
  >
    ${t}<span class="how" aria-hidden="true">${r?"\u2013":"="}</span>
  </button>`;return s`${Ro(e)(u,n)}
  ${r?s`<tr class="opened">
          <td colspan=${e.length+1} id=${l}>${e.map(o)}</td>
        </tr>`:d}`}var Ls=(e,t)=>s`<div class="sum">
    <table>
      <caption>
        ${e}
      </caption>
      <tbody>
        ${t}
      </tbody>
    </table>
  </div>`;function pd({parts:e,items:t},n){let o=e.find(i=>i.part===n);return o?t.some(i=>i.part===n&&i.cost!==null&&!i.from_tap)?o.each:"unpriced":"\u2013"}var md=(e,{items:t},n)=>Ls(e,t.filter(o=>o.part===n).map(({name:o,amount:i,cost:r,how:l})=>s`<tr>
            <th scope="row">${o}</th>
            <td>${r??"unpriced"}</td>
            <td>${l||i}</td>
          </tr>`)),fd=(e,t)=>Ms(e,"To lay out now, in whole packs",({cash:n})=>n?.total??"nothing",n=>s`${AP(t(n),n.cash)} ${DP(n.cash)}`),AP=(e,t)=>s`${Ls(`Packs to buy, ${e}`,(t?.packs??[]).map(({shown_as:n,count:o,holds:i,sum:r,seller:l})=>s`<tr>
          <th scope="row">${n}</th>
          <td>${r}</td>
          <td>${o} × ${i}${l?`, ${l}`:""}</td>
        </tr>`))}
  ${t?.unpriced.length?s`<p class="alarm">No pack is listed, and not in the sum: ${t.unpriced.join(", ")}.</p>`:d}
  ${t&&!t.proved_cheapest?s`<p class="hint">Not proved to be the least that is possible.</p>`:d}`,DP=e=>Ls("Left of them when all is made",(e?.left??[]).map(({shown_as:t,left:n})=>s`<tr>
          <th scope="row">${t}</th>
          <td>${n}</td>
        </tr>`));function Bs(e){let t=e.flatMap(({prices:n})=>n);return t.filter((n,o)=>t.findIndex(({way:i})=>i===n.way)===o)}var hy=e=>`${S(e,1)} %`;function PP(e){return"margin_percent"in e?`margin ${S(e.margin_percent,2)} %`:"markup_percent"in e?`markup ${S(e.markup_percent,2)} %`:"price as set"}var xm=(e,t)=>({prices:n})=>{let o=n.find(i=>i.way===e);return o?t(o):"\u2013"};function hd(e,t,{way:n,by:o,ask:i,with_tax:r},l,u=d){let c=i===r,p=Ro(e),m=b=>xm(n,b),_=(b,y)=>l?s`${y} ${wo(b)}`:y;return s`<tbody>
    ${Fs(s`<span class="way">${n}</span>, ${PP(o)}`,e)} ${u}
    ${p(t?c?"Ask, with tax":"Ask, without tax":"Ask",m(Tm),"ask")}
    ${t?p("tax in it",m(({tax:b})=>c?b:"none")):d}
    ${p("fees",m(({fees:b})=>b))}
    ${p("left for you",m(({profit:b})=>b))}
    ${p(_("margin","margin, of the price"),m(b=>hy(b.margin_percent)))}
    ${p(_("markup","markup, on the cost"),m(b=>hy(b.markup_percent)))}
  </tbody>`}var Tm=({ask:e,is_below_cost:t})=>t?s`<span class="below">${e}<small>below cost</small></span>`:e;function gd(e,t){let n=o=>e.filter(({prices:i})=>i.some(r=>r.way===o&&r.is_below_cost));return Bs(e).map(({way:o})=>({way:o,sold:n(o)})).filter(({sold:o})=>o.length).map(({way:o,sold:i})=>s`<p class="alarm below-cost">
          <strong><span aria-hidden="true">⚠</span> Below cost</strong> ${o}: ${t(i)}
        </p>`)}var Cs=e=>e===1?"once":`${e} times`;function gy({times:e,currency:t,has_tax:n},o){let i=Ro(e);return s`<p class="aside">Money in ${t}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices of the order">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">The order, made</th>
            ${e.map(r=>s`<th scope="col"><b>${Cs(r.times)}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("pieces",({pieces:r})=>r)}
        </tbody>
        ${OP(e)}
        <tbody>
          ${Fs(_d(e)?"All made anew it would cost":"It costs",e)}
          ${e[0].lines.map((r,l)=>MP(e,l))} ${i("The whole order",({cost:r})=>r,"sum-of")}
        </tbody>
        <tbody>
          ${fd(e,r=>`made ${Cs(r.times)}`)}
        </tbody>
        ${Bs(e).map((r,l)=>hd(e,n,r,l===0,CP(e,r.way)))}
      </table>
    </div>`}var _d=e=>e.some(({ready:t})=>t.lines.some(({text:n})=>n!==""));function OP(e){if(!_d(e))return d;let t=Ro(e),n=o=>({ready:i})=>i.lines.reduce((r,l)=>r+l[o],0);return s`<tbody>
    ${t("delivered",n("delivered"))} ${t("made already",n("taken"))} ${t("to make",n("to_make"))}
    ${t("What is left to make costs",({rest:o})=>o?o.cost:"nothing")}
    ${t("Materials of what is made already did cost",({ready:o})=>FP(o))}
  </tbody>`}function FP({cost:e,costs_unknown:t}){if(!e)return"nothing is taken";if(!e.materials.length)return"not known";let n=e.materials.map(({amount:o,currency:i})=>`${o} ${i}`).join(" + ");return e.unpriced.length||t.length?`more than ${n}`:n}var Rm=({run:e,sell:t})=>`${e??""}, ${t} ${t===1?"piece":"pieces"}`,MP=(e,t)=>Ms(e,Rm(e[0].lines[t]),({lines:n})=>n[t].cost,({lines:n})=>s`${LP(n[t])} ${n[t].parts.map(({part:o})=>BP(n[t],o))}`),LP=e=>Ls(`A piece of ${Rm(e)}, ${e.make} made`,[...e.parts.map(({part:t})=>[t,pd(e,t)]),["Cost of a piece",e.cost_each]].map(([t,n])=>s`<tr>
          <th scope="row">${t}</th>
          <td>${n}</td>
        </tr>`)),BP=(e,t)=>md(`${t} of all of them, ${Rm(e)}`,e,t),CP=(e,t)=>e[0].lines.map(({run:n},o)=>Ro(e)(`${n??""}, a piece`,({lines:i})=>xm(t,Tm)(i[o]))),_y=({times:e})=>gd(e,t=>`the order loses money, made ${t.map(n=>Cs(n.times)).join(", ")}.`);function $y({times:e}){let t=e.flatMap(({together:o})=>o.flatMap(({cautions:i})=>i)),n=e.flatMap(({lines:o})=>o.flatMap(({run:i,dangers:r})=>r.map(l=>`${i??""}: ${l}`)));return n.push(...t.filter(({severity:o})=>o==="danger").map(({text:o})=>o)),n.length?s`<div class="dangers">
    ${[...new Set(n)].map(o=>s`<p class="danger"><strong>${_t}</strong> ${o}</p>`)}
  </div>`:d}function by({times:e,remarks:t=[]}){let[{together:n,lines:o}]=e,i=n.flatMap(({cautions:r})=>r).filter(({severity:r})=>r!=="danger");return!n.length&&!t.length?d:s`<ul class="limits">
    ${n.map(r=>s`<li>
          <b
            >Poured together (${r.word}): ${Ee(r.lines.map(l=>o[l].run??""))} from one base,
            "${r.formula}", ${x(H(a.units,r.make_g))} in
            ${z(r.batches.reduce((l,{count:u})=>l+u,0),"batch","batches")}.</b
          >
        </li>`)}
    ${i.map(({text:r})=>s`<li>${r}</li>`)} ${t.map(r=>s`<li>${r}</li>`)}
  </ul>`}function WP(e){return e.length<2?e[0]?.way:e.find(({way:t})=>t===a.printing.way)?.way}function $d({file:e,question:t,prices:n,is_old:o}){let i=kn(e),r=WP(n),l={quote:n.length>1&&r?{...t,way:r}:t},u=n.map(p=>[p.way,p.way]),c={buy:{files:[e]}};return s`<section class="on-paper" aria-labelledby="quote-papers">
    <h3 id="quote-papers">On paper</h3>
    ${u.length>1?s`<p class="question">The price that is offered</p>
            ${ce("The price that is offered",r,u,p=>v(a.printing,{way:p}))}`:d}
    <div class="choice">
      ${n.length?vn({words:"Offer",kind:"offer",file:`${i} offer`,of:l,is_asleep:o||!r}):d}
      ${vn({words:"All of it, for you",kind:"quote",file:`${i} costs`,of:{quote:t}})}
      ${a.files?.studios.length?s`${vn({words:"Shopping list",kind:"list",file:`${i} to buy`,of:c})}
            ${Me("Shopping list, table",qe(`${i} to buy.csv`,{kind:"list-csv",...c}))}`:d}
    </div>
    ${n.length?r?d:s`<p class="hint">An offer has one price: choose which.</p>`:s`<p class="hint">Nothing can be offered before there is a price for it.</p>`}
    <p role="status">${yn()}</p>
  </section>`}var Sm=class extends HTMLElement{#n;#e="";#t="";#i="";#o=new IntersectionObserver(([t])=>t.isIntersecting&&void this.#l(),{rootMargin:"200px"});connectedCallback(){this.#r()}disconnectedCallback(){this.#o.disconnect(),this.#s()}set words(t){this.#e=t}set question(t){JSON.stringify(t)!==JSON.stringify(this.#n)&&(this.#n=t,this.#s(),this.#a(),this.#r())}#r(){this.#o.disconnect(),this.isConnected&&this.#o.observe(this)}#s(){this.#t&&URL.revokeObjectURL(this.#t),[this.#t,this.#i]=["",""]}async#l(){this.#o.disconnect();let t=this.#n,[n,o]=await IP(t);if(t!==this.#n||!this.isConnected)return URL.revokeObjectURL(n);[this.#t,this.#i]=[n,o],this.#a()}#a(){let t=this.#i||"Drawing ...";Rt(this.#t?s`<img src=${this.#t} alt=${this.#e} />`:s`<p class="hint">${this.#n?t:d}</p>`,this)}};async function IP(e){try{return[URL.createObjectURL(await sn({kind:"picture",quote:e})),""]}catch(t){if(!(t instanceof w))throw t;return["",t.message]}}customElements.define("cost-picture",Sm);function wy(e,t){let{costs:n,currency:o}=e;if(!n.length)return d;let[i,r]=[n[0],n.at(-1)],l=({sell:u,each:c})=>`${c} ${o} at ${u}`;return s`<section class="cost-picture" aria-labelledby="cost-picture">
    <h3 id="cost-picture">A piece's cost, by how many are made</h3>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Picture of the cost of a piece">
      <cost-picture
        .words=${`Cost of a piece against the pieces sold, from ${l(i)} to ${l(r)}, and where the money of a piece goes. The figures stand below.`}
        class=${t?"old":""}
        .question=${t?Ke:Gl()}
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
          ${EP(e).map(({sell:u,each:c})=>s`<tr>
                <th scope="row">${u}</th>
                <td>${c}</td>
              </tr>`)}
        </tbody>
      </table>
    </details>
  </section>`}function EP({costs:e,numbers:t,steps:n}){let o=new Set([...t.map(({sell:i})=>i),...n.flatMap(({sell:i})=>[i-1,i]),e[0].sell,e.at(-1).sell]);return e.filter(({sell:i})=>o.has(i))}var yy=({sell:e})=>`${e} to sell`;function vy({numbers:e,currency:t,has_tax:n},o){let i=Ro(e);return s`<p class="aside">Money in ${t}${n?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices, side by side">
      <table class="quote-table ${o?"old":""}">
        <thead>
          <tr>
            <th scope="col">Pieces to sell</th>
            ${e.map(r=>s`<th scope="col"><b>${r.sell}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${i("to make",r=>r.make)} ${i("fillings",r=>r.fillings)}
          ${i("batches",r=>r.batches)}
          ${e.some(r=>r.to_stock)?i("beyond those, at no cost",r=>r.to_stock):d}
        </tbody>
        <tbody>
          ${Fs("A piece costs",e)} ${NP(e).map(r=>jP(e,r))}
          ${i("Cost of a piece",r=>r.cost_each,"sum-of")} ${i("The whole run",r=>r.cost)}
        </tbody>
        <tbody>
          ${fd(e,yy)}
        </tbody>
        ${Bs(e).map((r,l)=>hd(e,n,r,l===0))}
      </table>
    </div>`}var NP=e=>[...new Set(e.flatMap(({parts:t})=>t.map(({part:n})=>n)))],jP=(e,t)=>Ms(e,t,n=>pd(n,t),n=>md(`${t} of the whole run, ${yy(n)}`,n,t)),ky=({numbers:e})=>gd(e,t=>`each piece sold loses money, at ${t.map(({sell:n})=>n).join(", ")} to sell.`);function xy(){return s`<section class="piece quote" aria-labelledby="quote-title">
    <h2 id="quote-title">What it costs, what to ask</h2>
    ${nn()?qP():HP()}
  </section>`}var HP=()=>s`<p class="hint">Once it is known what you paid for the materials, it stands here what a piece costs.</p>
    <button type="button" @click=${()=>Am()}>To the prices paid</button>`;function Am(e,t="lane-studio"){ue("set-up studio"),e&&Qe("studio",e),Ze("set-up"),requestAnimationFrame(()=>C(L(t)))}function qP(){let{quote:e,complaint:t,is_old:n}=Vl();return s`${e?s`${UP(e)} ${ky(e)}`:d}
    <div class="row">${JP(t)}</div>
    ${Dm()?d:Pm(e?.currency,t)} ${t?KP(t):d}
    ${e?YP(e,n):t?d:s`<p class="hint" role="status">Asking what it costs ...</p>`}`}function UP({numbers:e}){let t=[...new Set(e.flatMap(o=>o.dangers))];if(!t.length)return d;let n=o=>e.filter(i=>i.dangers.includes(o)).map(i=>i.sell);return s`<div class="dangers">
    ${t.map(o=>s`<p class="danger"><strong>${_t}</strong> ${n(o).join(", ")} to sell: ${o}</p>`)}
  </div>`}var zP=["sell","margin","markup","price"],or=(e,t)=>e?.file===""&&e.field===t?B(e):void 0;function KP(e){return zP.some(t=>or(e,t))?d:s`<p class="alarm" role="status">${Jn(e.field)}${B(e)}</p>
    ${e.is_fault?s`<button type="button" @click=${Up}>Ask again</button>`:e.field.startsWith("/")?s`<button type="button" @click=${Ep}>Go to the field</button>`:d}
    ${Wp(e)}`}function bd({id:e,label:t,unit:n,value:o,hint:i,complaint:r,take:l,left:u}){return s`<div class="field ${r?"wants":""}">
    <label for=${e} data-said=${n??d}>${t}</label>
    <input
      id=${e}
      .value=${P(o)}
      @input=${c=>l(c.target.value)}
      @blur=${()=>u?.()}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${r?"true":"false"}
      aria-describedby=${r||i?`${e}-said`:d}
    />
    ${be(e,r,i)}
  </div>`}function JP(e){let{numbers:t}=a.quote_wish;return bd({id:"quote-numbers",label:"Numbers of pieces",value:t??String(a.plan?.pieces.sell??""),hint:"One, or several to compare: 12, 24, 48",complaint:or(e,"sell"),take:n=>Pr({numbers:n}),left:()=>{t!==void 0&&!t.trim()&&Pr({numbers:void 0})}})}var VP=()=>le()?Am("money asking",`${Y("studio","/asking")}-name`):Am(),Dm=()=>Object.keys(g("studio","/asking")??{}).length>0,QP=[["margin","By a margin"],["markup","By a markup"],["price","A price as set"]],GP={margin:{label:"Margin, of the price",unit:"%"},markup:{label:"Markup, on the cost",unit:"%"},price:{label:"Price of a piece",unit:""}};function Pm(e,t){let{by:n,figure:o}=a.quote_wish,{label:i,unit:r}=GP[n??"price"],l=u=>r&&Oe(u)?`${u.trim()} ${r}`:u;return s`${ce("A price, for this moment",n,QP,u=>{Pr({by:u,figure:""}),C(L("quote-figure"))})}
    ${n?s`<div class="row">
            ${bd({id:"quote-figure",label:i,unit:r||e,value:r?o.replace(/ %$/,""):o,complaint:or(t,n),take:u=>Pr({figure:l(u)})})}
          </div>`:d}
    <p class="hint">Your ways of selling can be kept in My studio: then each price stands here.</p>
    <button type="button" @click=${VP}>Keep my ways of selling</button>`}function YP(e,t){let n=[...new Set(e.numbers.flatMap(o=>o.unpriced))];return s`${n.length?s`<p class="alarm">
          <strong>Unpriced</strong>, and so no price to ask: ${n.join(", ")}. The cost leaves it out.
        </p>`:d}
  ${e.remarks.map(o=>s`<p class="hint">${o}</p>`)} ${vy(e,t)}
  ${ZP(e,t)} ${wy(e,t)}
  ${$d({file:a.run.file,question:Gl(),prices:e.numbers[0].prices,is_old:t})}`}function ZP({numbers:e,steps:t,pack_steps:n,pack_steps_untold:o,gaps:i,currency:r},l){let u=c=>c===null?"":`, ${c} ${r} more`;return s`<div class="worth-making ${l?"old":""}">
    <h3>How many is it worth making?</h3>
    <ul class="limits">
      ${e.flatMap(({around:c})=>c.map(({text:p})=>s`<li><b>${p}</b></li>`))}
      ${i.map(({from:c,to:p,why:m})=>s`<li><b>${c===p?c:`${c} to ${p}`} cannot be made: ${m}.</b></li>`)}
    </ul>
    ${t.length?s`<details>
            <summary>Where the run begins to cost more</summary>
            <ul class="limits">
              ${t.map(c=>s`<li><b>${c.sell}: ${c.begins}${u(c.more)}</b></li>`)}
            </ul>
          </details>`:d}
    ${n.length||o.length?s`<details>
            <summary>Where another pack begins</summary>
            <p class="hint">Each material by itself, in its cheapest packs, without postage.</p>
            <ul class="limits">
              ${n.map(c=>s`<li><b>${c.sell}: ${c.shown_as}${u(c.more)} to lay out</b></li>`)}
              ${o.map(({from:c,to:p,shown_as:m,why:_})=>s`<li><b>${c===p?c:`${c} to ${p}`}: ${m}, not told: ${_}.</b></li>`)}
            </ul>
          </details>`:d}
  </div>`}function Ty({times:e}){let t=e.flatMap(({times:i,ready:r})=>r.lines.filter(({text:l})=>l).map(({text:l})=>e.length===1?l:`${Cs(i)}: ${l}`)),[{ready:n}]=e,o=[...new Set(n.notes.map(({text:i})=>i))];return!t.length&&!o.length?d:s`<div class="ready" role="group" aria-label="Pieces that are made already">
    ${t.map(i=>s`<p><b>${i}</b></p>`)} ${o.map(i=>s`<p>${i}</p>`)}
    ${n.lines.map((i,r)=>eO(i,r))}
    ${_d(e)?s`<p class="hint">${XP}</p>`:d}
  </div>`}var XP="What a piece costs and is asked for goes by all pieces made anew; to lay out is what the rest takes, and what packing all that is not delivered takes.",eO=({batches:e,made_otherwise:t},n)=>t.map(({batch:o,pieces:i,files:r})=>s`<p>
        <button type="button" @click=${()=>kw(n,[...e.map(l=>l.batch),o])}>
          Take the ${i} of batch ${o} all the same
        </button>
        <small>Made by another ${r.join(", ")}.</small>
      </p>`);function Ry(){let{order:e}=a;if(!e)return s`<h1 tabindex="-1">Order</h1>`;let{open:t}=e,{due:n}=t.now;return s`${_n(t)} ${$n(t)}
    <h1 tabindex="-1">${String(t.now.for||"Order")}</h1>
    <p class="aside">${t.file}${n?`, due ${N(String(n))}`:d}</p>
    ${xw()} ${Mn(t.now)?cd("order"):d}
    <section class="piece quote" aria-labelledby="quote-title">
      <h2 id="quote-title">What it costs, what to ask</h2>
      ${Mn(t.now)?nO():tO()}
    </section>
    ${Mn(t.now)?dO():d} ${lO()} ${aO()}`}var tO=()=>s`<p class="hint" role="status">
    Once each line has its run and its pieces, it stands here what the order costs.
  </p>`;function nO(){let{quote:e,complaint:t,is_old:n}=Jp();return s`${e?s`${$y(e)} ${_y(e)}`:d}
    <div class="row">${oO(t)}</div>
    ${Dm()?d:Pm(e?.currency,t)} ${t?rO(t):d}
    ${e?s`${Ty(e)} ${sO(e)} ${by(e)} ${gy(e,n)}
          ${$d({file:_e().open.file,question:Qp(_e()),prices:e.times[0].prices,is_old:n})}`:t?d:s`<p class="hint" role="status">Asking what it costs ...</p>`}`}var oO=e=>bd({id:"order-times",label:"How often it is made",value:_e().times,hint:"Once, if nothing is typed; several to compare: 1, 2, 4",complaint:or(e,"times"),take:t=>v(_e(),{times:t})}),iO=["times","margin","markup","price"];function rO(e){if(iO.some(n=>or(e,n)))return d;let t=Mt("order");return s`<p class="alarm" role="status">
      ${t?s`${Jn(e.field)}${B(e)}`:e.line}
    </p>
    ${e.is_fault?s`<button type="button" @click=${Vp}>Ask again</button>`:t&&fn()?s`<button type="button" @click=${()=>tt(fn())}>Go to the field</button>`:d}`}function sO({times:e}){let t=[...new Set(e.flatMap(n=>n.unpriced))];return t.length?s`<p class="alarm">
    <strong>Unpriced</strong>, and so no price to ask: ${t.join(", ")}. The cost leaves it out.
  </p>`:d}function aO(){let{file:e,now:t}=_e().open;if(e.includes("/"))return d;let n=t.id?String(t.id):`file:${e}`;return s`<section class="out" aria-labelledby="got-title">
    <h2 id="got-title">What it got</h2>
    <div class="choice">
      <button type="button" @click=${()=>Le(`order ${n}`,e)}>Its batches and their lots</button>
    </div>
  </section>`}function lO(){let{file:e,now:t}=_e().open,n=va(t);if(!n.length)return d;let{quote:o,is_old:i}=Jp(),r=o?.times.find(({times:u})=>u===1);return Xw({order:e,words:n,planned:u=>r&&(r.together.find(c=>c.word===u)?.batches??[]).flatMap(({numbers:c,lines:p})=>c.map(m=>({number:m,lines:p.map(({run:_,pieces:b})=>`${z(b,"piece")} of ${_}`)}))),is_old:i})}function dO(){let{file:e,now:t}=_e().open,n={plan:{file:e,order:t},paper:a.printing.paper};return s`<section class="out" aria-labelledby="sheets-title">
    <h2 id="sheets-title">The sheets for the bench</h2>
    ${sd()}
    <div class="choice">
      ${vn({words:"Bench sheets",kind:"sheet",file:`${kn(e)} sheets`,of:n},"strong")}
    </div>
    <p role="status">${yn()}</p>
  </section>`}var uO=(e,t)=>(e.due??"~").localeCompare(t.due??"~")||(t.changed??"").localeCompare(e.changed??"");function Sy(){let e=[...a.files?.orders??[]].sort(uO),t=a.new_order.trim(),n=()=>{pe(async()=>{await Y_(t),f({new_order:""})})};return s`${Bt("Orders")}
    <section aria-labelledby="orders-title">
      <h2 id="orders-title">Your orders</h2>
      ${e.length?en(e,cO):s`<p class="aside">
              None yet. An order names runs of yours and how many pieces of each somebody wants.
            </p>`}
      <h2>A new order</h2>
      <div class="row">
        <div class="field">
          <label for="new-order">For</label>
          <input
            id="new-order"
            .value=${P(a.new_order)}
            @input=${o=>f({new_order:o.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!t} @click=${n}>Begin the order</button>
      </div>
      ${t?"":s`<p class="hint">Say first who it is for: a customer, a market.</p>`}
    </section>
    ${Ct("order")}`}function cO(e){let{pieces:t,due:n,changed:o}=e,i=[t===void 0?"":z(t,"piece"),n?`due ${N(n)}`:"",o?`changed ${N(o)}`:""].filter(Boolean);return bn({kind:jo,one:e,facts:i,open:()=>Nn(e.file)})}function Dy(){if(a.view==="order"&&a.order)return Ay(a.order.open);let e=uo();if(e)return Ay(e);let t=pO();if(t)return t;let{run:n}=a,o=a.formula_of==="apart"||!(G(n)||n.theirs||n.failed);return a.view==="formula"&&o?mO():n.theirs?Mm(n):n.failed?yd(`Not saved: ${n.failed}`):G(n)?Fm:wd(n.shipped?Om:`Saved in ${n.file}`)}function Ay(e){return e.theirs?Mm(e):e.failed?yd(`Not saved: ${e.failed}`):G(e)?Fm:wd(e.shipped?Om:`Saved in ${e.file}`)}var Om="Built-in: your first change is saved as a copy.",Fm={words:"Saving ...",is_kept:!1},wd=e=>({words:e,is_kept:!0}),yd=e=>({words:e,is_kept:!1,is_failed:!0}),Mm=e=>yd(Ko(e)?`Not saved: ${e.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${e.file} was changed outside this page. Choose which version to keep.`);function pO(){let e=a.formulas.apart?"apart":"run",t=Fn(e);if(t)return Mm(t);if((e==="apart"?[a.formulas.apart]:[a.formulas.pour,a.formulas.pipe]).some(o=>o&&G(o)))return a.complaint?.file===""?yd(`Not saved: ${a.complaint.problem}`):Fm}function mO(){let e=a.formulas[a.formula_of];return wd(e?e.shipped?Om:`Saved in ${e.file}`:"")}function kd(){let{view:e,mould:t,order:n,past:o,future:i}=a;if(e==="shelf"||e==="trail")return{};if(e==="moulds"&&t)return vd(t,J_,V_);let r=ct(e)?uo():void 0;return r?vd({past:Py(r,o),future:Py(r,i)},Ir,Nu):ct(e)?{undo:Nr()&&Xc,redo:Ju()&&V$}:e==="order"&&n?vd(n,Z_,X_):vd({past:o,future:i},Ir,Nu)}function Py(e,t){let n=t.at(-1),o=n&&[n.own_fats,n.own_tips].find(i=>i?.file===e);return o&&o.now!==e.now?t:[]}var vd=({past:e,future:t},n,o)=>({undo:e.length?n:void 0,redo:t.length?o:void 0});var Oy={runs:"Runs",orders:"Orders",formulas:"Formulas",moulds:"Moulds",fats:"Fats",tips:"Tips",shelf:"Shelf"},fO={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],record:["Record","M6 5h12v15H6zM9.5 3.5h5v3h-5zM9 11h6M9 15h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],days:["Days","M5 6h14v14H5zM5 10.5h14M9 3.5v5M15 3.5v5"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},hO="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",gO="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",Lm=e=>s`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${R`<path d=${e} />`}</svg>`;function Ly(){let e=a.view==="reading";return s`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${e?d:s`<nav class="rail-lists" aria-label="Lists">
                ${Jf.map(t=>By(t,Oy[t],s`${Oy[t]}`))}
              </nav>
              ${$O()}`}
    </div>
    ${e?d:bO()}
  </header>`}var _O={metric:s`g<span class="wide">, mm</span>`,both:s`both`,us:s`oz<span class="wide">, in</span>`},xd=["metric","both","us"],Fy={metric:"g",both:"both",us:"oz"},My=e=>()=>{f({units:e}),localStorage.setItem("units",e)};function $O(){let e=xd[(xd.indexOf(a.units)+1)%xd.length];return s`<div class="tools units" role="group" aria-label="Units">
      ${xd.map(t=>s`<button type="button" aria-pressed=${a.units===t?"true":"false"} @click=${My(t)}>
            ${_O[t]}
          </button>`)}
    </div>
    <button type="button" class="next-units" @click=${My(e)}>
      <span aria-hidden="true">⇄ </span><span class="unseen">Units: </span>${Fy[a.units]}<span
        class="unseen"
        >. Change to ${Fy[e]}</span
      >
    </button>`}function bO(){let{undo:e,redo:t}=kd();return s`<div class="bar">
    ${a.run.file?wO():d}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!e} @click=${e}>${Lm(hO)}<span>Undo</span></button>
      <button type="button" ?disabled=${!t} @click=${t}>${Lm(gO)}<span>Redo</span></button>
    </div>
    ${a.run.file||a.view==="order"?TO():d}
  </div>`}function wO(){return s`<nav aria-label="Views of this run">
    <p class="rail-name">${String(a.run.now.name??a.run.file)}</p>
    <div class="rail-views">${Vf.map(yO)}</div>
  </nav>`}function yO(e){let[t,n]=fO[e],o=vO(e);return By(e,o?`${t}, ${o.words}`:t,s`${Lm(n)}<span>${t}</span>${o?s`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:d}`)}function vO(e){if(e==="watch"&&o$())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(e==="record"&&kO())return{sign:"\u2717",words:"refused"};if(e==="set-up"&&xO())return{sign:"\u25CB",words:"missing"}}var kO=()=>a.record.run===a.run.file&&a.record.batches.some(({begun:e})=>qa(e.id)>0),xO=()=>a.complaint!==void 0&&!a.complaint.is_fault;function By(e,t,n){let o=a.view===e||a.view==="order"&&e==="orders"||a.view==="trail"&&e==="shelf"||a.view==="learned"&&e==="record";return s`<button
    type="button"
    aria-label=${t}
    aria-current=${o?"page":d}
    @click=${()=>{Ze(e)}}
  >
    ${n}
  </button>`}function TO(){let{words:e,is_kept:t,is_failed:n}=Dy();return s`<p class="saving ${n?"failed":t?"kept":""}" role="status">${e}</p>`}var Cy=()=>s`<section class="card" aria-label="What it is for">
      <div class="row">
        ${h({label:"Due",at:"/due",date:!0,optional:!0,short:!0,hint:"The day it is handed over. Left blank, it is begun today."})}
        ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
        ${h({label:"For",at:"/for",optional:!0,hint:"Whom or what, such as the spring fair."})}
      </div>
    </section>
    ${cd("run")}`;var Bm=e=>Rn("GET",`/api/learned?run=${encodeURIComponent(e)}`),Wy=e=>xt("/api/learned/take",e);var RO=1e3,Ey=()=>[a.run.file,a.plan,a.record.version],SO=(e,t)=>e!==void 0&&e.every((n,o)=>n===t[o]),ir=e=>f({learned:{...a.learned,...e}});function Ny(){mo();let{learned:e}=a,t=a.record.run===a.run.file&&a.record.version!==void 0&&!a.is_old,n=SO(e.of,Ey());return t&&!n&&!Cm&&AO(),{...e.run===a.run.file?e:{},is_old:!t||!n}}var Td=()=>ir({of:void 0}),Cm=!1;async function AO(){Cm=!0;try{await DO()}finally{Cm=!1,f({})}}async function DO(){let e=Ey(),t=a.run.file;try{let n=await Bm(t);t===a.run.file&&ir({of:e,run:t,kept:n,failed:void 0})}catch(n){if(!(n instanceof w))throw n;if(t!==a.run.file)return;ir({of:e,run:t,failed:B(n.complaint)}),n.may_pass&&window.setTimeout(Td,RO)}}var PO=()=>G(a.run)||[...un()].some(G);async function OO(e,t){if(!PO())return[e,t];await rt(),await ht();let n=await Bm(a.run.file);return[n.learned?.figures.find(({name:o})=>o===e.name)??e,n]}var jy=e=>qy(e,"take"),Hy=e=>qy(e,"undo");async function qy(e,t){let{kept:n,doing:o}=a.learned;if(o!==void 0||!n||!e.in_file)return;ir({doing:e.name,said:void 0});let i=a.run.file;try{let[r,l]=await OO(e,n),{file:u}=e.in_file,c=await Wy({run:i,file:u,version:l.versions[u]??"",[t]:r.name});FO(c),Iy(e,`${u} was changed.`)}catch(r){if(!(r instanceof w))throw r;Iy(e,`Nothing was written: ${B(r.complaint)}.`,!0),Td()}finally{ir({doing:void 0})}}function Iy({name:e},t,n=!1){ir({said:{name:e,words:t,is_refused:n}}),D(t)}function FO(e){for(let t of[a.run,...un()])t.file===e.file&&Yh(t,e);se(),Ya()}function pi(e,t){let{units:n}=a;return e==="mm"?`${t>0?"+":""}${x($e(n,t))}`:e==="ml"?x(ke(n,t)):e==="g"?x(H(n,t)):e==="g/ml"?`${Je(t,3)} g/ml`:e==="%"?`${S(t,1)} %`:e==="min"?t<5?`${Je(t*60,0)} s`:`${Je(t,0)} min`:S(t,3)}var Rd=e=>e===1?"1 batch":`${e} batches`,Uy=e=>e.charAt(0).toUpperCase()+e.slice(1),zy=({figures:e,batches:t})=>e.length?`From ${Rd(t)} recorded beside this run. Only a batch's own notes tell a figure.`:`${Rd(t)} recorded beside this run: a figure is shown once three of them tell it.`;function Ky(e,t){let n=`learned-${e.name.replaceAll(/\W/g,"-")}`,{unit:o,value:i,low:r,high:l,values:u}=e;return s`<article class="learned-figure" data-name=${e.name} aria-labelledby=${n}>
    <h3 id=${n}>${Uy(e.words)}</h3>
    <div class="learned-told">
      <p class="learned-value"><b>${pi(o,i)}</b></p>
      <p>
        between <span class="low">${pi(o,r)}</span> and <span class="high">${pi(o,l)}</span>, from
        <span class="count">${Rd(u.length)}</span>
      </p>
      <p>
        ${e.used_now===null?MO(e):s`The plan uses <b class="used">${pi(o,e.used_now)}</b>.`}
      </p>
    </div>
    ${LO(e)} ${BO(e)} ${WO(e)} ${IO(e,n,t)} ${NO(e)}
    ${jO(e)}
  </article>`}var MO=({unit:e})=>e==="min"?"The studio says nothing of it yet.":"The plan uses none.";function LO({values:e,low:t,high:n,value:o,used_now:i}){let r=[...e.map(m=>m.value),t,n,...i===null?[]:[i]],[l,u]=[Math.min(...r),Math.max(...r)],c=u-l||1,p=m=>6+288*(m-l)/c;return s`<svg class="learned-strip" viewBox="0 0 300 30" aria-hidden="true">
    ${R`<rect class="range" x=${p(t)} y="6" width=${Math.max(1,p(n)-p(t))} height="18" />
      <path class="told" d="M${p(o)} 3v24" />
      ${i===null?d:R`<path class="used" d="M${p(i)} 1v28" />`}
      ${e.map(m=>R`<circle cx=${p(m.value)} cy="15" r="3" />`)}`}
  </svg>`}function BO({standing:e,in_file:t}){return t?.is_taken?d:e==="stands nowhere"||!t?s`<p class="aside">For you to know: no file has a place for it.</p>`:e==="too few"?s`<p class="aside">Too few batches yet to tell it from chance: it can be taken from six on.</p>`:e==="as planned"?s`<p class="aside">What the plan uses lies between these: no reason to change it.</p>`:t.refused?s`<p class="minded">
        <strong>Cannot be taken:</strong> it ${t.refused.problem}. ${Uy(t.refused.remedy)}.
      </p>`:d}var CO=({of:e,unit:t,now:n,then:o})=>s`<li>
    ${e}: ${pi(t,n)} <span aria-hidden="true">→</span><span class="unseen">becomes</span>
    <b>${pi(t,o)}</b>
  </li>`;function WO({with_it:e,no_plan_with_it:t,in_file:n}){return n?.is_taken?d:t!==void 0?s`<p class="minded"><strong>With it there would be no plan:</strong> ${t}.</p>`:e.length?s`<p>With it:</p>
        <ul class="learned-effects">
          ${e.map(CO)}
        </ul>`:d}function IO(e,t,n){let{in_file:o,standing:i}=e;if(!o)return d;let{file:r,says:l,would_say:u,is_taken:c,taken:p,refused:m}=o,_=!c&&!m&&i==="suggested",b=n||a.learned.doing!==void 0;return s`${p?EO(p,o):d}
    ${_?s`<p class="in-file">
            In ${r}: ${l??"nothing yet"} <span aria-hidden="true">→</span><span class="unseen">becomes</span>
            <b>${u}</b>
          </p>`:d}
    <div class="row">
      ${_?s`<button
              type="button"
              class="strong"
              ?disabled=${b}
              aria-describedby=${t}
              @click=${()=>{jy(e)}}
            >
              Take it
            </button>`:d}
      ${p?s`<button
              type="button"
              ?disabled=${b}
              aria-describedby=${t}
              @click=${()=>{Hy(e)}}
            >
              Take back
            </button>`:d}
    </div>`}var EO=({on:e,batches:t,before:n,steps:o},{file:i,says:r})=>s`<p class="taken">
    <strong><span aria-hidden="true">✓</span> Taken</strong> on ${N(e)} from ${Rd(t)}: <b>${r}</b> in
    ${i}, and the plan uses it. Before: ${n??"nothing"}${o>1?", which was taken as well":""}.
  </p>`;function NO({name:e}){let{said:t}=a.learned;return t?.name!==e?d:s`<p class=${t.is_refused?"complaint":"hint"} role="status">${t.words}</p>`}var jO=({values:e,unit:t,name:n})=>s`<details>
    <summary>Batch by batch</summary>
    <ul class="learned-batches" data-of=${n}>
      ${e.map(o=>s`<li>${o.batch}, ${N(o.date)}: <b>${pi(t,o.value)}</b></li>`)}
    </ul>
  </details>`;var HO=({years:e})=>e.map(String).reverse();function Jy(e){let t=a.run.file,n=kn(t),o=i=>({kind:"picture",learned:{file:t,...i}});return s`<section class="out" aria-labelledby="learned-pictures">
    <h3 id="learned-pictures">Plan against actual, in one picture</h3>
    <div class="choice">
      ${Me("This run",rd(o({})))}
      ${Me("This run, SVG",qe(`${n} plan against actual.svg`,o({})))}
      ${HO(e).map(i=>s`${Me(`The year ${i}`,rd(o({year:i})))}
          ${Me(`The year ${i}, SVG`,qe(`${n} ${i}.svg`,o({year:i})))}`)}
    </div>
    <p role="status">${yn()}</p>
  </section>`}function Vy(){let{kept:e,failed:t,is_old:n}=Ny();return s`<section class="learned" aria-labelledby="run-title">
    <h1 id="run-title" tabindex="-1">${a.plan?.run??String(a.run.now.name??"")}</h1>
    <p><button type="button" @click=${()=>{Ze("record")}}>Back to the record</button></p>
    <h2>What your batches say</h2>
    ${t===void 0?d:s`${qO(t)}`}
    ${e?UO(e.learned,n):t===void 0?s`<p class="hint" role="status">Reading ...</p>`:d}
  </section>`}var qO=e=>s`<p class="alarm" role="status"><strong>What they say could not be read:</strong> ${e}.</p>
    <button type="button" @click=${Td}>Ask again</button>`;function UO(e,t){return e?.batches?s`<div class=${t?"old":""}>
    <p class="hint">${zy(e)}</p>
    ${e.figures.map(n=>Ky(n,t))} ${zO(e.figures)} ${KO(e)}
    ${JO(e)} ${VO(e)} ${Jy(e)}
  </div>`:s`<p>No batch is recorded yet. A figure is shown once three batches tell it.</p>`}function zO(e){let t=e.some(({level_percent:o})=>o!==null),n=e.some(({level_percent:o})=>o===null);return e.length?s`<p class="aside">
    Each dot is a batch. The shaded part is the range, the line in it what they say together, the dashed line what the
    plan uses.
    ${t?"From six batches on, a range holds the true figure 19 times of 20, unless notes are wrong in the same way each time. ":d}
    ${n?"Below six, it is from the least to the greatest.":d}
  </p>`:d}var KO=({left_out:e})=>e?s`<p class="aside">
        ${e===1?"1 batch was":`${e} batches were`} of another formula, mould or topping under the same
        name, and ${e===1?"is":"are"} not counted where that matters.
      </p>`:d,JO=e=>e.untold.length?s`<h3>What the notes cannot tell</h3>
        <ul class="limits">
          ${e.untold.map(({text:t})=>s`<li>${t}</li>`)}
        </ul>`:d,VO=e=>e.contradictions.length?s`<h3>Notes that contradict each other</h3>
        <ul class="limits">
          ${e.contradictions.map(({text:t})=>s`<li>${t}</li>`)}
        </ul>`:d;function Gy(e){if(!N$(e))return d;let{whole:t}=e,{batches:n}=t.pieces,o=Ge(t)?`${z(n,"batch","batches")} together`:"all whippings together";return s`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${Qy(e,"pour","The base, whole run")}
      ${t.pipe?Qy(e,"pipe","The topping, whole run"):d} ${QO(e)}
    </div>
  </section>`}function Qy(e,t,n){let{whole:o}=e,i=t==="pour"?o.pour:o.pipe,r=[...rb(i),...kl(i)];return s`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${r.map(({one:l,i:u})=>Sd(`${t}.ingredients.${u}.g`,l.name,si(a.units,l)))}
    ${Sd(`${t}.make_g`,t==="pour"?"Base in all":"Topping in all",H(a.units,i.make_g))}
  </div>`}var Sd=(e,t,n)=>I({key:`needs.${e}`,label:t,shown:n,of:e});function QO(e){let{whole:t}=e,n=(t.pour.layers??[]).flatMap((r,l)=>r.colours.map((u,c)=>({layer:r,one:u,i:l,j:c}))),o=t.dust??[];if(!n.length&&!o.length)return d;let i=r=>X(a.units,ae(r,""));return s`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:r,one:l,i:u,j:c})=>Sd(`pour.layers.${u}.colours.${c}.g`,`${l.name}, for ${r.name}`,si(a.units,l)))}
    ${o.map((r,l)=>Sd(`dust.${l}.g`,r.name,i(r)))}
  </div>`}function Yy(e){let{cost:t,fresh_g:n,cured_g:o,label_g:i,lightest:r,size:l}=e.piece,u=r?"A bar on average, ":"",c=p=>u?u+p.toLowerCase():p;return s`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${I({key:"piece.fresh",label:c("Fresh"),shown:H(a.units,n),of:"piece.fresh_g"})}
      ${o===null?d:I({key:"piece.cured",label:c("Cured"),shown:H(a.units,o),of:"piece.cured_g"})}
      ${r?I({key:"piece.lightest",label:"The lightest bar",note:r.cured_g===null?"fresh":"cured",shown:H(a.units,r.cured_g??r.fresh_g),of:r.cured_g===null?"piece.fresh_g":"piece.cured_g"}):d}
      ${i===null?d:I({key:"piece.label",label:"Net weight for the label",shown:H(a.units,i,0),of:"piece.label_g"})}
      ${l?I({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[l.width_mm,l.depth_mm,l.height_mm].map(p=>S(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):d}
      ${t&&t.amount!==null?s`${I({key:"piece.cost",label:"Material cost of one piece",shown:[`${t.amount} ${t.currency}`,""],size:"weigh",note:`${t.total} ${t.currency} for the run`,of:"piece.cost.amount"})}
            ${t.unpriced.length?s`<p class="alarm">Unpriced, and not in this figure: ${t.unpriced.join(", ")}.</p>`:d}`:s`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${Wm(e)}
    </section>
    ${xy()} ${Gy(Ji(e))}`}function Wm(e){let t=e.label;if(!t)return d;let n=(t.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,r)=>r?s`<h3>${i}</h3>
          <p>${r}</p>`:d;return s`<details>
    <summary>Label draft, ${t.market}</summary>
    ${o("Net quantity",t.net_quantity?`${t.net_quantity.statement}: ${t.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",t.as_saponified?.text)}
    ${o("Ingredients, as charged",t.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(t.remarks??[]).map(i=>s`<li>${i.text}</li>`)}
    </ul>
  </details>`}var[Xy,Em]=[440,270],[Ws,Im,Ad,rr]=[64,Xy-10,10,Em-52],GO=6,YO=8;function Zy(e){let t=e/GO,n=10**Math.floor(Math.log10(t)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=t);return Array.from({length:Math.floor(e/o+1e-9)+1},(i,r)=>r*o)}var sr=e=>S(e,1);function ev(e,t){let n=e.at(-1)?.depth_mm??1,o=e.at(-1)?.volume_ml??1,i=u=>sr(Ws+(Im-Ws)*u/n),r=u=>sr(rr-(rr-Ad)*u/o),l=e.map(({depth_mm:u,volume_ml:c})=>`L${i(u)} ${r(c)}`).join("");return s`<svg
      class="level-curve"
      viewBox="0 0 ${Xy} ${Em}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${t} millimetres"
    >
      ${Zy(n).map(u=>R`<path class="grid" d="M${i(u)} ${Ad}V${rr}" />
            <text x=${i(u)} y=${rr+20} text-anchor="middle">${sr(u)}</text>`)}
      ${Zy(o).map(u=>R`<path class="grid" d="M${Ws} ${r(u)}H${Im}" />
            <text x=${Ws-8} y=${r(u)} text-anchor="end" dominant-baseline="middle">${sr(u)}</text>`)}
      ${R`<text x=${(Ws+Im)/2} y=${Em-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(Ad+rr)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${r(0)}${l}" />
        <path class="pour-line" d="M${i(t)} ${Ad}V${rr}" />`}
    </svg>
    ${ZO(e)}`}function ZO(e){let t=Math.max(1,Math.round(e.length/YO)),n=e.filter((o,i)=>(i+1)%t===0);return s`<details>
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
        ${n.map(({depth_mm:o,volume_ml:i,ml_per_mm:r})=>s`<tr>
              <th scope="row">${sr(o)}</th>
              <td>${sr(i)}</td>
              <td>${S(r,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var Dd=Math.PI/8,XO=500,Nm=class extends HTMLElement{#n=[];#e=0;#t;#i=!1;#o=!1;#r="";#s=!1;#l="";#a="Drawing ...";#u=0;#m=!1;#f=new ResizeObserver(()=>this.#t?.fit());#h=new IntersectionObserver(([t])=>this.#$(t.isIntersecting),{rootMargin:"400px"});set views(t){this.#n=t,this.#g()}connectedCallback(){this.#d(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#u),this.#h.disconnect(),this.#f.disconnect(),this.#t?.end(),this.#t=void 0,this.#l="",URL.revokeObjectURL(this.#r)}#$(t){this.#m=t,t&&requestIdleCallback(()=>{this.#b()},{timeout:1500})}async#b(){if(this.#t||this.#o)return this.#g();let t=this.querySelector("canvas");if(!(!this.isConnected||!t||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#t=new n(t),this.#f.observe(t)}catch{this.#o=!0}this.#i=!1,this.#d(),await this.#p()}}#g(){let t=this.#t||this.#o;!this.#m||!t||this.#c()===this.#l||(window.clearTimeout(this.#u),this.#u=window.setTimeout(()=>{this.#p()},XO))}#c(){let{of:t}=this.#n[this.#e],n=this.#o?"plan"in t?"piece":"picture":"glb",[o,i]=Object.entries(t)[0];return JSON.stringify({kind:n,[o]:this.#s&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let t=this.#c();if(t!==this.#l){try{let n=await sn(JSON.parse(t));if(t!==this.#c()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#r),this.#r=URL.createObjectURL(n)):this.#t?.show(Oi(await n.arrayBuffer())),this.#l=t,this.#a=""}catch(n){if(!(n instanceof w))throw n;this.#a=n.message}this.#d()}}#_(t){t(),this.#a="Drawing ...",this.#d(),this.#p()}#d(){let t=s`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>s`<button
            type="button"
            aria-pressed=${i===this.#e?"true":"false"}
            @click=${()=>this.#_(()=>this.#e=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=s`<p class="aside" role="status">${this.#a}</p>`;Rt(s`${t} ${this.#o?this.#y():this.#w()} ${n}`,this)}#w(){let t=i=>()=>this.#t?.turn(i),n=i=>()=>this.#t?.tip(i),o=()=>this.#_(()=>this.#s=!this.#s);return s`<canvas
        role="img"
        aria-label="${this.#n[this.#e]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${t(-Dd)}>Turn left</button>
        <button type="button" @click=${t(Dd)}>Turn right</button>
        <button type="button" @click=${n(Dd)}>From above</button>
        <button type="button" @click=${n(-Dd)}>From below</button>
        <button type="button" aria-pressed=${this.#s?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return s`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#r?s`<img
              src=${this.#r}
              alt="${this.#n[this.#e].words}, drawn to scale with its measures"
            />`:d}`}};customElements.define("solid-panel",Nm);function tv(e){let{measured:t}=a;if(!t)return s`<p role="status">${a.measuring_failed??"Measuring the mould ..."}</p>`;let n=t.gauge.pockets[0],o=t.gauge.notes;return s`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${e.pour.mould}</small></h2>
    ${I({key:"mould.brimful",label:"To the brim",note:`${x($e(a.units,n.brim_mm-n.floor_mm))} deep, ${t.gauge.pockets.length} ${t.gauge.pockets.length===1?"cavity":"cavities"}`,shown:ke(a.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:t.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    ${Bl(Db(t.mould))}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${ev(n.levels,e.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${eF(e,t.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?s`<ul class="limits">
            ${o.map(i=>s`<li>${i.text}</li>`)}
          </ul>`:d}
  </section>`}function eF(e,t){let n={words:"The mould, filled",of:{gauge:{file:t,"below-brim":`${e.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:a.run.file,run:a.run.now}}};return e.pipe||e.decorations?.length||e.pour.layers?.length?[o,n]:[n,o]}var tF=e=>e.batches.flatMap(t=>t.numbers.map(n=>({number:n,one:t}))).sort((t,n)=>t.number-n.number);function nv(e){let{batch:t}=a.printing;return Ge(e)&&t<=e.pieces.batches?t:0}function nF(e){if(!Ge(e))return d;let t=nv(e),n=i=>ci({batch:Number(i.target.value)}),o=(i,r)=>s`<option value=${i} .selected=${P(i===t)}>${r}</option>`;return s`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${tF(e).map(({number:i,one:r})=>o(i,`batch ${i} of ${e.pieces.batches}: ${Xt(e,r)}`))}
      </select>
    </div>
  </div>`}function ov(e){let{paper:t}=a.printing,n=kn(a.run.file),o={file:a.run.file,run:a.run.now},i=a.measured?.mould,r={file:i,"below-brim":`${e.pour.below_brim_mm} mm`},l=nv(e),u={plan:o,paper:t,...l?{batch:String(l)}:{}};return s`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${sd()} ${nF(e)}
    <div class="choice">
      ${vn({words:"Bench sheet",kind:"sheet",file:`${n}${l?` batch ${l}`:""}`,of:u},"strong")}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${e.label?Me("Label draft",qe(`${n} label.txt`,{kind:"label",plan:o})):""}
      ${Me("Drawing of the pour, true size",qe(`${n} pour.svg`,{kind:"picture",plan:o}))}
      ${Me("Drawing of the piece",qe(`${n}.svg`,{kind:"piece",plan:o}))}
      ${Me("Whole piece, GLB (3D viewer)",qe(`${n}.glb`,{kind:"glb",plan:o}))}
      ${Me("Whole piece, STL (3D printing)",qe(`${n}.stl`,{kind:"stl",plan:o}))}
      ${i?s`${Me("Filled cavity, GLB (3D viewer)",qe(`${n} cavity.glb`,{kind:"glb",gauge:r}))}
            ${Me("Cavity, STL (3D printing)",qe(`${n} cavity.stl`,{kind:"stl",gauge:{file:i}}))}`:""}
    </div>
    <p role="status">
      ${yn()||`The drawing has the pour line ${x($e(a.units,e.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var iv=e=>ov(e);var Ne={at:"/decorations"},ar=e=>`${Ne.at}/${e}`,So=e=>O("run",`${ar(e)}/name`).trim()||`Decoration ${e+1}`,dt=()=>$(a.run.now,"/cut")!==void 0,mi=e=>["mould","rod","drizzle","bought"].find(t=>g("run",`${e}/${t}`)!==void 0),Is=e=>["per_piece","per_cast"].find(t=>g("run",`${e}/${t}`)!==void 0);var kt="/batch",rv=e=>`${e}/moulds_owned`;function jm(){return F({name:"batches",pointers:[kt],summary:`Batches${oF()}`,body:()=>s` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${W("run",kt)}
        <div class="row">${iF()} ${sF()}</div>
        ${A({question:"Cavities at each filling",at:kt,asked_at:`${kt}/fill`,chosen:g("run",`${kt}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:e=>sv("fill",e==="full"?e:void 0)})}`})}function oF(){let[e,t]=[`${kt}/pieces`,`${kt}/casts`].map(o=>O("run",o)),n=[e&&`at most ${e} in a batch`,t&&`at most ${t} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function sv(e,t){let n=ge("run",kt,[e]),o=t===void 0?n:{...n,[e]:t};return Object.keys(o).length?o:void 0}function iF(){let e=g("run",`${kt}/casts`)!==void 0,t=(n,o)=>h({label:o,at:`${kt}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0,term:"batch"});return dt()?g("run",`${kt}/pieces`)!==void 0?s`${t("pieces","Most bars in a batch")}
        <button type="button" @click=${rF}>Count loaves instead</button>`:t("casts","Most loaves in a batch"):e?t("casts","Most casts in a batch"):t("pieces","Most pieces in a batch")}function rF(){q("run","Counted in loaves",kt,sv("pieces",void 0))}function sF(){let e=`${kt}/whippings`;return!wt()&&g("run",e)===void 0?d:h({label:"Whippings a batch",at:e,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var aF={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},Wt={at:"/dust"},Pd=e=>O("run",`/dust/${e}/name`).trim()||`Dust ${e+1}`;function av(){ue("set-up dust"),U(Wt,{name:""},"Dust")}function lF(e){return g("run",`${e}/per_piece`)!==void 0?"piece":g("run",`${e}/on_covered_surface`)===void 0?void 0:"surface"}function lv(e){let t=`/dust/${e}`,n=lF(t),o=Pd(e),i=r=>({...ge("run",t,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...aF[r]});return s` ${h({label:"Which powder",at:`${t}/name`})}
  ${A({question:"How much of it?",at:t,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?h({label:`${o}, for one piece`,at:`${t}/per_piece`,unit:"g",hint:"What misses it included."}):d}
  ${n==="surface"?s`<div class="row">
            ${h({label:"Powder on the covered surface",at:`${t}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${h({label:"Share of the surface covered",at:`${t}/coverage`,unit:"%",short:!0})}
            ${h({label:"Share of the powder that sticks",at:`${t}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:d}
  ${vo("run",t,o)}`}var dF={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function uF(e){return["on_top","buried"].find(t=>g("run",`${e}/${t}`)!==void 0)??"by number"}function dv(e,t){let n=uF(e),o=i=>({...ge("run",e,["on_top","buried"]),...dF[i]});return mi(e)==="drizzle"?s`<p class="aside">A drizzle lies on the surface it covers.</p>`:mi(e)==="bought"?s`<p class="aside">What is bought is counted; where it sits is not checked.</p>`:F({name:`${e} where`,pointers:[`${e}/on_top`,`${e}/buried`],summary:"Where it goes",body:()=>s` ${A({question:"Where does it go?",at:e,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?cF(`${e}/on_top`):n==="buried"?mF(e,t):s`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function cF(e){return s`<div class="row">
      ${h({label:"Pressed into the top",at:`${e}/pressed_in`,unit:"mm"})}
      ${h({label:"Flat of the peak, across",at:`${e}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${uv(e,"It is turned")}`}function uv(e,t){let n=o=>h({label:`About ${o}`,at:`${e}/turn/${o}`,unit:"deg",optional:!0,short:!0});return F({name:`${e} turn`,pointers:[`${e}/turn`],summary:t,body:()=>s` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var pF=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function mF(e,t){let n=`${e}/buried`,o=t===k(Ne).findIndex(l=>l.buried!==void 0),i=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),r=g("run",`${n}/placed`);return s`${W("run",n)}
  ${h({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between the embed and wall, floor, pour line and the next one.",term:o?"embed":void 0})}
  ${A({question:"When is it set in?",at:`${n}/placed`,chosen:r,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:l=>l,hint:"Pressed in, it stays where it is once the batter is at a firm trace.",term:o?"trace":void 0})}
  ${A({question:"Where in the pour?",at:e,asked_at:`${n}/arrange`,chosen:i,answers:pF,puts:l=>hF(e,l)})}
  ${i==="said"?_F(e,t):d}`}var fF=()=>s`<svg
    class="places"
    viewBox="0 0 216 84"
    role="img"
    aria-label="From above, x is counted from the middle to the right and y to the back; from the side, the height from the floor to its lowest point."
  >
    ${R`<g class="axes"><path d="M10 14H94V70H10Z M52 42H76M76 42V26M52 14V70M10 42H94" />
      <path d="M122 20L130 70H198L206 20M178 70V52" /></g>
    <circle class="shaded decorate" cx="76" cy="26" r="7" /><circle class="shaded decorate" cx="178" cy="45" r="7" />
    <text x="60" y="52">x</text><text x="80" y="40">y</text><text x="182" y="65">height</text>
    <text x="10" y="82">from above</text><text x="130" y="82">from the side</text>`}
  </svg>`,cv={x:"",y:"",height:""};function hF(e,t){let n=ge("run",`${e}/buried`,["arrange","places"]);if(t!=="said")return{...g("run",e),buried:{...n,arrange:t}};let o=Number(g("run",`${e}/${Is(e)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>cv);return{...ge("run",e,["per_piece","per_cast"]),[pv(e)]:i.length,buried:{...n,places:i}}}var pv=e=>dt()?"per_cast":Is(e)??"per_piece";function gF(e){let t=(n,o)=>{let i=["per_piece","per_cast"].reduce((r,l)=>M(r,`${e}/${l}`,void 0),n);return M(i,`${e}/${pv(e)}`,o)};return{at:`${e}/buried/places`,least:1,and:t}}function _F(e,t){let n=gF(e),o=k(n);return s`${fF()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,r)=>{let l=`${n.at}/${r}`,u=c=>h({label:`Place ${r+1}: ${c}`,at:`${l}/${c}`,unit:"mm",short:!0});return s`<div class="part" id=${E(n,r)} role="group" aria-label="Place ${r+1} of ${So(t)}">
        ${W("run",l)}
        <div class="row">
          ${u("x")} ${u("y")} ${u("height")} ${J(n,r,`place ${r+1} of ${So(t)}`)}
        </div>
        ${uv(l,`Place ${r+1} is turned`)}
      </div>`})}
    ${ee(n,"Add a place",()=>U(n,cv,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var fv=e=>`${e} made`;function $F(){let e=ar(k(Ne).length),t=dt()?{}:{per_piece:""};ue("set-up decorate");for(let n of[fv(e),`${e} where`])Qe("run",n);U(Ne,{name:"",material:"",...t,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function hv(){let[e,t]=[k(Ne).length>0,k(Wt).length>0];return s`${ee(Ne,e?"Add another decoration":"Add a decoration",$F)}
  ${ee(Wt,t?"Add another dust":"Add a dust",av)}`}function gv(e){let t=ar(e);return s` ${W("run",t)} ${kF(t)}
    <div class="row">
      ${wF(t)} ${h({label:"Spares",at:`${t}/spares`,unit:"%",short:!0})}
      ${mi(t)==="bought"?d:bF(t)}
    </div>
    ${dv(t,e)} ${vo("run",t,So(e))}`}var bF=e=>s`${h({label:"Lost in melting",at:`${e}/melt_loss`,unit:"%",short:!0})}
  ${h({label:"Left in the jug per tray fill",at:`${e}/left_in_jug`,unit:"g",short:!0})}
  ${h({label:"Density when set",at:`${e}/density`,unit:"g/ml",short:!0})}`;function wF(e){let t=Is(e),n=te("run",`${e}/buried/places`).length;if(n&&n===g("run",`${e}/${t}`)&&!(dt()&&t==="per_piece"))return s``;let o=t==="per_cast"?dt()?"In each loaf":"In each cast":dt()?"On each bar":"On each piece",i=r=>({...ge("run",e,["per_piece","per_cast"]),[r]:t?g("run",`${e}/${t}`):""});return s`${dt()?A({question:"Counted by",at:e,is_told_elsewhere:!0,chosen:t,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):d}
  ${t?h({label:o,at:`${e}/${t}`,count:!0,short:!0}):d}`}var yF={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}},bought:{bought:{}}},mv={density:"",melt_loss:"",left_in_jug:""};function vF(e,t){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle","bought",...t==="drizzle"||t==="bought"?["on_top","buried"]:[],...t==="bought"?[...Object.keys(mv),"time_per_tray_fill"]:[]],o=mi(e)==="bought"&&t!=="bought"?mv:{};return{...ge("run",e,n),...o,...yF[t]}}function kF(e){let t=mi(e),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","bought","time_per_tray_fill"].map(o=>`${e}/${o}`);return F({name:fv(e),pointers:n,summary:"What it is and how it is made",is_needed:!t,body:()=>s` <div class="row">
          ${h({label:"What it is called",at:`${e}/name`})}
          ${h({label:t==="bought"?"What is bought":"What is melted for it",at:`${e}/material`})}
        </div>
        <p class="hint">${t==="bought"?"It has a price by the piece.":"The price goes by what is melted."}</p>
        ${A({question:"How is it made?",at:e,is_told_elsewhere:!0,chosen:t,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"],["bought","Bought, and only counted"]],puts:o=>vF(e,o)})}
        ${t?xF[t](e):d}
        ${t==="bought"?d:h({label:"To fill all trays once, setting included",at:`${e}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var xF={mould:TF,rod:e=>s`<div class="row">
      ${h({label:"Rod, diameter",at:`${e}/rod/diameter`,unit:"mm",short:!0})}
      ${h({label:"Rod, length",at:`${e}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:e=>s`<div class="row">
      ${h({label:"Area covered",at:`${e}/drizzle/area`,unit:"cm2",short:!0})}
      ${h({label:"Thickness",at:`${e}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`,bought:e=>h({label:"One weighs",at:`${e}/bought/weighs`,unit:"g",optional:!0,short:!0,hint:"Weigh ten. A label needs it."})};function TF(e){let t=g("run",`${e}/fill/depth`)===void 0?"below_brim":"depth";return s`${Ui("Cast in",`${e}/mould`,a.files?.moulds)}
  ${A({question:"Filled to a line",at:`${e}/fill`,chosen:t,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${t==="below_brim"?h({label:"Filled to, below the brim",at:`${e}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):h({label:"Filled to, above the floor",at:`${e}/fill/depth`,unit:"mm"})}
  ${A({question:"What makes one?",at:`${e}/cast_as`,chosen:g("run",`${e}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}var It=()=>a.plan?.piece.cost?.materials.map(e=>e.name)??[],ne=e=>a.fats.find(t=>t.id===e)?.name??e,Hm=8;function fi({key:e,label:t,offers:n,among:o,taken:i,take:r}){let l=`find-${e}`,u=a.finding?.key===e?a.finding.text:"",c=(u.trim()?RF(u,o):n).filter(y=>!i(y)),p=y=>{f({finding:void 0}),r(y)},m=u.trim(),_=m!==""&&!i(m)&&!c.some(y=>et(ne(y))===et(m)),b=()=>{if(!m)return;let y=c.find(V=>et(ne(V))===et(m)||et(V)===et(m)),T=c.length===1?c[0]:void 0;(y??T??_)&&p(y??T??m)};return s`<div class="picker" role="group" aria-labelledby="${l}-label">
    <p class="question" id="${l}-label">${t}</p>
    <div class="field">
      <label for=${l}>Find it by its name</label>
      <input
        id=${l}
        .value=${u}
        @input=${y=>f({finding:{key:e,text:y.target.value}})}
        @keydown=${y=>{y.key==="Enter"&&b()}}
        autocomplete="off"
        spellcheck="false"
      />
    </div>
    <div class="choice">
      ${c.slice(0,Hm).map(y=>s`<button type="button" @click=${()=>p(y)}>${ne(y)}</button>`)}
      ${_?s`<button type="button" @click=${()=>p(m)}>Add "${m}"</button>`:d}
    </div>
    ${c.length>Hm?s`<p class="hint">${c.length-Hm} more: type a part of the name.</p>`:d}
  </div>`}function RF(e,t){let n=t?[]:It(),o=et(e).split(/\s+/).filter(Boolean),i=a.fats.filter(l=>Hn(l,e)!==void 0).map(({id:l})=>l),r=l=>o.every(u=>et(ne(l)).includes(u));return[...new Set([...n.filter(l=>r(l)||i.includes(l)),...i])]}var Vn="/packaging",lr={at:Vn,stays:!0},_v={material:"",each_piece:""},SF={studio:void 0,own:[_v],nothing:[]},AF=()=>g("run",Vn)===void 0?"studio":k(lr).length?"own":"nothing";function qm(){let e=AF();return F({name:"packaging",pointers:[Vn],summary:`Packaging${DF(e)}`,body:()=>s`${A({question:"What goes round each piece",at:Vn,is_told_elsewhere:e==="own",chosen:e,answers:[["studio","As the studio packs"],["own","Of this run's own"],["nothing","Nothing"]],puts:t=>SF[t],then:t=>t==="own"?`${Vn}/0/material`:Vn})}
      ${e==="own"?PF():d}`})}function DF(e){if(e==="studio")return"";if(e==="nothing")return": none";let t=te("run",Vn).map(({material:n})=>ne(String(n??""))).filter(Boolean);return t.length?`: ${t.join(", ")}`:""}var PF=()=>s`<p class="hint">In place of all that the studio packs with. Its price is that of its pack.</p>
    ${k(lr).map((e,t)=>{let n=String(e.material||`packaging ${t+1}`);return s`<div class="row" id=${E(lr,t)}>
        ${h({label:`Material ${t+1}`,at:`${Vn}/${t}/material`,hint:"As its pack or price calls it."})}
        ${h({label:`Of it, each piece ${t+1}`,at:`${Vn}/${t}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
        ${J(lr,t,n)}
      </div>`})}
    ${ee(lr,"Another material",()=>U(lr,_v,"A material"))}`;function $v(){let e="/lye_pot",t=g("run",e)!==void 0;return!t&&!wt()?d:s`<div class="labelled">
      ${Wc(e,"Make one pot of lye solution for both",t,{})}${qn("lye_solution")}
    </div>
    ${Qt("lye_solution")}
    ${t?h({label:"The empty pot weighs",at:`${e}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):d}`}function bv(e){let t={at:"/bottles"},n=k(t);return F({name:"bottles",pointers:[t.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>s` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${e&&we(e)?` Weights are of ${we(e)}.`:""}
        </p>
        ${n.map((o,i)=>{let r=`${t.at}/${i}`,l=String(o.name)||`bottle ${i+1}`;return s`<div class="part" id=${E(t,i)} role="group" aria-label=${l}>
            <div class="part-head">
              <p class="part-title">${l}</p>
              ${J(t,i,l)}
            </div>
            ${W("run",r)}
            <div class="row">
              ${h({label:"Fragrance, as in the formulas",at:`${r}/name`})}
              ${h({label:"The bottle holds",at:`${r}/holds`,unit:"g",short:!0})}
            </div>
            ${e?OF(e,i,l):d}
          </div>`})}
        ${ee(t,"Use up a bottle",()=>U(t,{name:"",holds:""},"bottle"))}`})}function OF(e,t,n){let o=e.bottles?.[t];return o?.name!==n?d:o.parts.map((i,r)=>I({key:`bottle.${t}.${r}`,label:`Into the ${i.part.toLowerCase()}`,note:`${S(i.percent_of_batter,2)} % of the batter`,shown:X(a.units,ae(i,"")),size:"weigh",of:`${e.place}.bottles.${t}.parts.${r}.g`}))}var Es="/label",zm=()=>g("run",Es)!==void 0;function wv(){let t=g("studio",dr.studio)!==void 0?{weight_spread:""}:{market:""};ue("set-up label"),q("run","Label added",Es,t,L("lane-label"))}function yv(){return s`${W("run",Es)} ${FF()}
    <button type="button" @click=${()=>q("run","Label removed",Es,void 0)}>Remove the label</button>`}var dr={run:"/label/market",studio:"/label/market"};function Km(){let{of:e,at:t}=rs(dr);return s`${A({of:e,question:"Where it is sold",at:e==="run"?Es:t,asked_at:t,chosen:g(e,t)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>e==="run"?MF(n):n})}
  ${yo("Where it is sold",[dr])}`}function FF(){let e=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return s`${Km()}
  ${A({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:e,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:LF})}
  ${e==="weighed"?BF():s`<div class="row">
          ${h({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${h({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${h({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${hn(dr)==="EU"||g("run",Um)!==void 0?Wc(Um,"With the e mark",g("run",Um)===!0,!0):d}`}var Um="/label/e_mark";function MF(e){return{...ge("run","/label",e==="EU"?[]:["e_mark"]),market:e}}function LF(e){let t=ge("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return e==="weighed"?{...t,weighed_pieces:["","",""]}:t}function BF(){let e={at:"/label/weighed_pieces",least:3};return s`<div class="trials">
      ${k(e).map((t,n)=>s`<div class="row" id=${E(e,n)}>
            ${h({label:`Piece ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${J(e,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${ee(e,"One more piece",()=>U(e,"","piece"))}`}function vv(e){let{batches:t,fillings:n,cavities:o,to_stock:i}=e.pieces,r=e.batches.map(c=>`${Qc(e)?`${c.count} of `:""}${Xt(e,c)}`),l=`Made in ${t} batches${Qc(e)?": ":" of "}${Ee(r)}; ${_l(n,o)}.`,u=e.batch_limits.filter(c=>c.sets);return s`<div class="batches-told of-plan">
    ${Ge(e)?s`<p><b>${l}</b></p>`:d}
    ${i>0?s`<p>
            ${z(i,e.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:d}
    ${u.length?s`<p><span class="called">What sets a batch:</span> ${u.map(c=>c.text).join(" ")}</p>`:d}
    ${e.around.length?s`<p><span class="called">One fewer, one more:</span> ${e.around.map(c=>c.text).join(" ")}</p>`:d}
  </div>`}var kv=e=>e.map(t=>`M${t.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function xv(e,t){let n=t.brim-t.floor,o=e.pour.poured_to_mm??e.pour.depth_mm,i=e.decorations?.find(c=>!c.buried&&c.cavity_fills>0),r=i?Av(i):0,l=i?i.on_top?.stands_proud_mm??1.9*r:0,u=e.pipe?CF(e,t,n,l):0;return{brim:n,line:o,topping:u,ball:r,proud:l,top:Math.max(n,(e.pipe?n:o)+u+l)}}function CF(e,t,n,o){let i=Vt($(a.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let r=(e.piece.size?.height_mm??0)-n-o;if(r>1)return r;let[l,u]=Gu(t,t.brim-.01),c=Math.PI/4*(u-l)**2;return 1500*e.pipe.visible_each_ml/c}function Jm(e,t){let[n,o]=Gu(e,e.brim-.01),i=(n+o)/2,r=3,l=m=>(o-n)/2*Math.sqrt(1-(m/(r+.3))**2),u=m=>-(t.brim+t.topping*m/r),c=(m,_,b)=>{let y=i+b*(Math.max(l(m),l(_))+(o-n)*.035);return`C${y} ${u(m)} ${y} ${u(_)} ${i+b*l(_)*(_?.94:1)} ${u(_)}`},p=`M${n} ${u(0)}`;for(let m=0;m<r;++m)p+=c(m,m+1,-1);p+=`L${i+l(r)*.94} ${u(r)}`;for(let m=r;m>0;--m)p+=c(m,m-1,1);return`${p}Z`}var Ns=(e,t)=>e===t?`shaded ${t}`:"plain";function Ao(e,t,n=d){return s`${Tv(e,t,n)}
  ${e==="decorate"&&Vm(t)?s`<p class="hint">${Vm(t)}</p>`:d}`}var Do=(e,t)=>s`<div class="small-view">${Tv(e,t,d)}</div>`;function Tv(e,t,n){let o=a.measured?.outline;if(!o)return s`<p class="drawing hint">${a.measuring_failed??"Reading the mould ..."}</p>`;let i=xv(t,o),r=o.right-o.left,l=Math.max(6,r*.1),u={x:o.left-l,y:-i.top-l,w:r+2*l,h:i.top+2*l};return s`<div class="drawing">
    <svg viewBox="${u.x} ${u.y} ${u.w} ${u.h}" role="img" aria-label=${KF(e,t)}>
      ${WF(e)} ${IF(e,t,o,i)} ${NF(e,t,o,i)} ${jF()}
      ${HF(e,t,o,i)} ${zF(e,t,o,i)}
      ${R`<line class="pour-line" x1=${u.x+1} x2=${u.x+u.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${u.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${u.x+u.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function Rv(e,t){let n=a.measured.outline,o=xv(e,n),i=n.right-n.left,r=Math.max(6,i*.1),l=o.top+2*r;return{share:(o.top+r-t)/l,per_mm:1/l,w:i+2*r,h:l}}function WF(e){return R`<defs>
    <pattern id="hatch-${e}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${e}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${e}"><path clip-rule="evenodd" d=${kv(Sv())} /></clipPath>
  </defs>`}function Sv(){let e=a.measured.outline;return e.loops.map(t=>t.map(([n,o])=>[n,o-e.floor]))}function IF(e,t,n,o){let i=e==="cut"?"pour":e,r=t.pour.layers??[],l=(r.length?r.map(u=>EF(u,n)):[[o.line,o.line]]).map(([u,c])=>`M${n.left} 0V${-u}L${n.right} ${-c}V0Z`);return R`<g clip-path="url(#cavity-${e})">${l.map((u,c)=>R`<path class="whole" d=${u} /><path class="${Ns(i,"pour")} band${c%3}" d=${u} />${i==="pour"&&c%2===0?R`<path fill="url(#hatch-${e})" d=${u} />`:d}`).reverse()}</g>`}function EF(e,t){let{surface:n,to_mm:o}=e;if(!n)return[o,o];let i=r=>n.over_origin_mm+n.rise_x*r+n.rise_y*t.cut_y;return[i(t.left),i(t.right)]}function NF(e,t,n,o){if(!t.pipe||o.line>=o.brim)return d;let i=Math.min(1,(parseFloat(String($(a.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),r=(n.right-n.left)*i,l=(n.left+n.right)/2;return R`<g clip-path="url(#cavity-${e})"><rect class=${Ns(e,"pipe")} x=${l-r/2} width=${r}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function jF(){return R`<path class="wall" fill-rule="evenodd" d=${kv(Sv())} />`}function HF(e,t,n,o){let i=(n.left+n.right)/2,r=t.pipe?o.brim:o.line,l=t.decorations?.flatMap((u,c)=>(u.buried?.embeds??[]).map(p=>({embed:p,one:u,i:c})))??[];return R`
    ${t.pipe?R`<path class=${Ns(e,"pipe")} d=${Jm(n,o)} />${e==="pipe"?R`<path fill="url(#dots-pipe)" d=${Jm(n,o)} />`:d}`:d}
    ${e==="dust"?qF(t,n,o):d}
    ${o.ball?R`<circle class=${Ns(e,"decorate")} cx=${i} cy=${-(r+o.topping+o.proud-o.ball)} r=${o.ball} />`:d}
    ${l.map(({embed:u,one:c,i:p})=>UF(Ns(e,"decorate"),i,u,c,p))}`}function qF(e,t,n){let o=`M${t.left} ${-n.line}H${t.right}`;return R`<path class="powder" d=${e.pipe?Jm(t,n):o} />`}function UF(e,t,n,o,i){let[r,l]=[t+n.middle_mm[0],n.middle_mm[2]],u=Vt($(a.run.now,`/decorations/${i}/rod/diameter`)),c=Vt($(a.run.now,`/decorations/${i}/rod/length`));if(!u||!c)return R`<circle class=${e} cx=${r} cy=${-l} r=${Av(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],_=Math.min(1,Math.hypot(p,m)),b=u/2*Math.sqrt(1-_*_),y=c*_+2*b,T=-180/Math.PI*Math.atan2(m,p);return R`<rect class=${e} x=${-y/2} y=${-u/2} width=${y} height=${u} rx=${b} ry=${b?u/2:0}
    transform="translate(${r} ${-l}) rotate(${T})" />`}var Av=e=>Math.cbrt(3e3*e.volume_each_ml/(4*Math.PI));function Vm(e){let t=(e.decorations??[]).filter((n,o)=>$(a.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return t.length?`Drawn as a ball of its volume, whatever its shape: ${t.join(", ")}.`:""}function zF(e,t,n,o){if(e!=="cut"||!t.cut)return d;let i=Math.max(t.cut.rows,t.cut.columns);return R`${Array.from({length:i-1},(r,l)=>{let u=n.left+(n.right-n.left)*(l+1)/i;return R`<line class="knife" x1=${u} x2=${u} y1=${-o.line} y2="0" />`})}`}function KF(e,t){let n=x($e(a.units,t.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[e]} is shaded. Pour line ${n} below the brim. ${Vm(t)}`.trim()}var JF=e=>`set-up ${e}`;function ut({name:e,title:t,drawing:n,result:o,about:i,form:r}){let l=JF(e),u=()=>Ft({part:t,fold:l},r);if(Un())return s`${u()}`;i.some(([m,_])=>Ve(m,_))&&ue(l);let c=a.open.has(l),p=qi().filter(({folds:m})=>m.includes(l)).length;return s`<section class="lane ${e} ${c?"is-open":""}" aria-labelledby="lane-${e}">
    <div class="part-line">
      ${c||!n?d:n()}
      <div class="part-told">
        <h2 id="lane-${e}" tabindex="-1">${t}</h2>
        ${o} ${p?s`<p class="lacks">${p} still needed</p>`:d}
      </div>
      <button
        type="button"
        aria-expanded=${c?"true":"false"}
        aria-label="${c?"Close":"Change"} ${t}"
        @click=${()=>je("open",l)}
      >
        ${c?"Close":"Change"}
      </button>
    </div>
    ${c?s`<div class="lane-body">${u()}</div>`:d}
  </section>`}var Re=e=>s`<p class="order ${a.is_old&&a.plan?"old":""}">${e}</p>`;var Dv=()=>k(Ne).length>0,Pv=()=>k(Wt).length>0;function Ov(e,t,n,o){return e?.length===t.length?e[o]:e?.find(i=>i.name===n)}function Fv(e){let t=e?k(Ne).flatMap((n,o)=>Bv(e,o)??[]):[];return ut({name:"decorate",title:"Decorate",drawing:e&&(()=>Do("decorate",e)),result:t.length?t.map(n=>GF(e,n)):Re(Mv(Ne,So)),about:[["run",Ne.at]],form:()=>s`${e?s`<div class="side">${Ao("decorate",e)}</div>`:d}
        <div class="weights">${e?k(Ne).map((n,o)=>VF(e,o)):d}</div>
        ${Cv(Ne,So,gv)}`})}var Mv=(e,t)=>`${k(e).map((n,o)=>t(o)).join(", ")}, not yet with figures.`;function VF(e,t){let n=Bv(e,t);return n?YF(e,n,t):d}function Lv(e){let t=e?.dust?.length?k(Wt).map((n,o)=>XF(e,o)):void 0;return ut({name:"dust",title:"Dust",drawing:e&&(()=>Do("dust",e)),result:t??Re(Mv(Wt,Pd)),about:[["run",Wt.at]],form:()=>s`<div class="side">${e?Ao("dust",e):d}</div>
        <div class="weights">${e?k(Wt).map((n,o)=>eM(e,o)):d}</div>
        ${Cv(Wt,Pd,lv)}`})}var Bv=(e,t)=>Ov(e.decorations,k(Ne),O("run",`/decorations/${t}/name`),t);function Cv(e,t,n){return s`<div class="all-questions">
    ${k(e).map((o,i)=>s`<section class="questions" id=${E(e,i)} aria-labelledby="${E(e,i)}-title">
          <div class="part-head">
            <h3 id="${E(e,i)}-title">${t(i)}</h3>
            ${J(e,i,t(i))}
          </div>
          ${Ft({part:t(i)},()=>n(i))}
        </section>`)}
  </div>`}function QF(e,t){return s`<h3>${e.name}</h3>
    ${I({key:`decorations.${t}.count`,label:"Bought, spares included",shown:[String(e.casts),""],of:`decorations.${t}.casts`})}`}function GF(e,t){if(t.bought)return Re(s`<b>${t.casts}</b> × ${t.name}, bought.`);let n=t.tray_fills>0?`, in ${t.tray_fills} tray ${t.tray_fills===1?"fill":"fills"}`:"",o=x(X(a.units,ae(t,"make_")));return Re(s`Cast <b>${t.casts}</b> of ${t.name} ahead${n}, from <b>${o}</b> of
      ${t.material}${Ge(e.whole)?", for the whole run":""}.`)}function YF(e,t,n){return t.bought?QF(t,n):s`<h3>${t.name} ${Ge(e.whole)?s`<small>for the whole run</small>`:d}</h3>
    ${I({key:`set-up.decorations.${n}.make`,label:`Melt of ${t.material}`,shown:X(a.units,ae(t,"make_")),of:`decorations.${n}.make_g`})}
    ${I({key:`decorations.${n}.each`,label:"Each weighs",note:`${S(t.volume_each_ml,2)} ml`,shown:H(a.units,t.mass_each_g??0,2),of:`decorations.${n}.mass_each_g`})}
    ${t.casting_s?s`<p>${bo(t.casting_s)} of casting.</p>`:d} ${ZF(t,n)}`}function ZF(e,t){let{on_top:n,buried:o}=e;if(!n&&!o)return d;let i=l=>l===null?"not known":x($e(a.units,l)),r=l=>{let u=(o?.embeds??[]).map(l).filter(c=>c!==null);return u.length?x($e(a.units,Math.min(...u))):"nothing near"};return s`<h4>Fit of ${e.name}</h4>
    <dl class="facts">
      ${n?s`<div>
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
              </div>`:d}
      ${o?s`<div>
                <dt>In each</dt>
                <dd>${o.embeds.length}</dd>
              </div>
              <div>
                <dt>Least cover to the floor</dt>
                <dd>${r(l=>l.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${r(l=>l.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${r(l=>l.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${r(l=>l.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${S(o.displaced_ml,1)} ml</dd>
              </div>`:d}
    </dl>
    ${ei(`decorations.${t}.fit`,"How the fit is measured",`decorations.${t}.${n?"on_top":"buried"}`)}`}function XF(e,t){let n=Wv(e,t);if(!n)return d;let o=we(e);return Re(s`<b>${x(X(a.units,ae(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var Wv=(e,t)=>Ov(e.dust,k(Wt),O("run",`/dust/${t}/name`),t);function eM(e,t){let n=Wv(e,t);if(!n)return d;let o=g("run",`/dust/${t}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,r=I({key:`set-up.dust.${t}`,label:n.name,note:we(e),shown:X(a.units,ae(n,"")),of:`${e.place}.dust.${t}.g`});return s`${r}${i?s`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:d}`}function Iv(e){let t=e?.cut;return ut({name:"cut",title:"Cut",drawing:e&&(()=>Do("cut",e)),result:t?tM(e,t):Re("Cut into bars, not yet with figures."),about:[["run","/cut"],["studio","/kerf"]],form:()=>s`${t?nM(e,t):d}
        <div class="all-questions">${Lb()}</div>`})}var tM=(e,t)=>Re(s`Cut <b>${t.bars_each} bars</b> from each, ${t.columns} by ${t.rows}; a bar is
      ${x(H(a.units,e.piece.fresh_g))} on average, fresh.`);function nM(e,t){return s`<div class="side">${Ao("cut",e)}</div>
    <div class="weights">
      ${I({key:"cut.bar",label:"A bar on average, fresh",note:oM(t),shown:H(a.units,e.piece.fresh_g),of:"cut.bars_each"})}
      ${I({key:"cut.offcuts",label:"Offcuts",shown:H(a.units,t.offcuts_g),of:"cut.offcuts_g"})}
      ${iM(t)}
    </div>`}function oM(e){let t=e.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...t)*10)/10,o=Math.ceil(Math.max(...t)*10)/10;return`${S(n,1)} to ${S(o,1)} g`}function iM(e){return e.one_more?.length?s`<ul class="limits">
    ${e.one_more.map(t=>s`<li>Cut to ${t.size_text} along ${t.direction}: ${t.bars} bars from each.</li>`)}
  </ul>`:d}function Ev(e){return ut({name:"label",title:"Label",drawing:sM,result:Re(rM(e)),about:[["run","/label"]],form:()=>s`<div class="more">${yv()} ${e?Wm(e):d}</div>`})}function rM(e){let t=e?.piece.label_g;return!e?.label||t===null||t===void 0?"A draft of the label, not yet with figures.":s`Net weight for the label <b>${x(H(a.units,t,0))}</b>, sold in the ${e.label.market}.`}var sM=()=>s`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${R`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var Qn=e=>h({...e,of:"studio"});function Nv(){let e=(t,n,o)=>F({of:"studio",name:`ready ${t}`,pointers:[t],summary:s`<span>${n}<small>${fe("studio",t).join(", ")}</small></span>`,body:o});return s`<section class="questions of-studio" aria-label="Standing ready">
    <h3>Standing ready</h3>
    <div class="folds">
      ${e("/lye_solutions","Lye solutions",uM)} ${e("/blends","Melted blends of fats",mM)}
    </div>
  </section>`}var aM=["/prices","/packs","/have","/waste"],lM=e=>(t,n)=>aM.reduce((o,i)=>$(o,`${i}/${j(e)}`)===void 0?o:ls(o,i,e,n),t);function dM(e,t){let n=i=>i===e?t:Array.isArray(i)?i.map(r=>r===e?t:r):i&&typeof i=="object"&&i.name===e?{...i,name:t}:i,o=["/pour/lye_from","/pipe/lye_from","/pour/blend","/pipe/blend"];return i=>o.reduce((r,l)=>{let u=$(r,l);return u===void 0?r:M(r,l,n(u))},i)}function jv({at:e,name:t,label:n,body:o}){let i=(l,u)=>zt([["studio",l],["run",dM(t,u)]]),r=`${e}/${j(t)}`;return s`<div class="part" role="group" aria-label=${t}>
    <div class="part-head">
      <p class="part-title">${t}</p>
      ${oi("studio",e,t)}
    </div>
    ${W("studio",r)}
    <div class="row">${as({of:"studio",at:e,name:t,label:n,also:lM(t),put:i})}</div>
    ${o}
    <div class="row">
      ${Qn({label:"Made on",at:`${r}/made_on`,date:!0,optional:!0,short:!0})}
      ${Qn({label:"Made by",at:`${r}/from`,optional:!0,short:!0})}
      ${Qn({label:"Note",at:`${r}/note`,optional:!0})}
    </div>
  </div>`}var ur="/lye_solutions",uM=()=>s`<p class="hint">
      Lye dissolved beforehand. A run weighs it in place of dry alkali and less water; choose it there, with the base or
      the topping.
    </p>
    ${fe("studio",ur).map(e=>jv({at:ur,name:e,label:"What you call it",body:cM(e)}))}
    ${Ki({of:"studio",at:ur,label:"Another solution, such as Lye jug A",add:"Add the solution",blank:{strength:"",strength_range:["",""],kept_at:""},then:e=>oe("studio",`${ur}/${j(e)}/alkali`)})}`;function cM(e){let t=`${ur}/${j(e)}`,n=O("studio",`${t}/alkali`),o=n||"alkali",i=O("studio",`${t}/strength`);return s`${A({of:"studio",question:"Which alkali is dissolved in it?",at:`${t}/alkali`,chosen:n||void 0,answers:[["NaOH","NaOH, sodium hydroxide"],["KOH","KOH, potassium hydroxide"]],puts:r=>r,then:()=>`${t}/strength`})}
    <div class="row">
      ${Qn({label:`Strength: pure ${o} in 100 g of the solution`,at:`${t}/strength`,unit:"%"})}
      ${Qn({label:"Coldest it stands",at:`${t}/kept_at`,hint:"With its unit: 18 \xB0C, 64 \xB0F. Strong lye crystallises in the cold."})}
    </div>
    <p role="status">${pM(i,o)}</p>
    <p class="question">By now it may be</p>
    <div class="row">
      ${Qn({label:"as weak as",at:`${t}/strength_range/0`,unit:"%",short:!0})}
      ${Qn({label:"or as strong as",at:`${t}/strength_range/1`,unit:"%",short:!0})}
    </div>
    ${W("studio",`${t}/strength_range`)}
    <p class="hint">An open jug grows stronger as water leaves it, and weaker as it takes up carbon dioxide.</p>
    ${nt({of:"studio",at:`${t}/made_from`,name:`what ${e} is dissolved of`,title:"Dissolved by yourself",add:"I dissolve it myself",blank:{purity:""},body:()=>s`<div class="row">
            ${Qn({label:`Purity of the dry ${o}`,at:`${t}/made_from/purity`,unit:"%",short:!0})}
          </div>
          <p class="hint">It then costs what its alkali and water cost, unless it has a price of its own.</p>`})}`}function pM(e,t){let n=/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(e)?.[1],o=Number(n?.replace(",","."));if(!n||o>=100)return`As much ${t} as water is 50 %.`;let i=r=>String(Math.round(r*100)/100);return`So ${i(o)} g of pure ${t} and ${i(100-o)} g of water in 100 g.`}var js="/blends",mM=()=>s`<p class="hint">
      Fats melted together beforehand. A run weighs the blend in place of what it holds of the formula's fats; choose it
      there, with the base or the topping.
    </p>
    ${fe("studio",js).map(e=>jv({at:js,name:e,label:"What you call it",body:fM(e)}))}
    ${Ki({of:"studio",at:js,label:"Another blend, such as Hard fats",add:"Add the blend",blank:{fats:[]},then:e=>L(`find-blend ${e}`)})}`;function fM(e){let t={of:"studio",at:`${js}/${j(e)}/fats`,stays:!0},n=k(t),o=i=>n.some(r=>r.fat===i);return s`${W("studio",t.at)}
  ${n.map((i,r)=>s`<div class="row" id=${E(t,r)}>
        ${Qn({label:ne(String(i.fat)),at:`${t.at}/${r}/share`,unit:"%",short:!0})}
        ${J(t,r,ne(String(i.fat)))} ${W("studio",`${t.at}/${r}/fat`)}
      </div>`)}
  ${n.length?s`<p class="total" role="status">
          ${Qi("Its fats",n.map(i=>i.share))}
        </p>`:d}
  ${fi({key:`blend ${e}`,label:n.length?"Another fat of it":"Which fats are in it?",offers:hM(),among:"fats",taken:o,take:i=>U(t,{fat:i,share:""},ne(i))})}`}var hM=()=>[...new Set(["pour","pipe"].flatMap(e=>{let t=a.formulas[e]?.now.fats;return Array.isArray(t)?t.map(n=>String($(n,"/fat")??"")).filter(Boolean):[]}))],Hv=e=>k({of:"studio",at:`${js}/${j(e)}/fats`}).map(({fat:t})=>String(t)),cr=e=>{let t=g("studio",`${ur}/${j(e)}`)??{},[n,o]=[t.alkali,t.strength].map(i=>String(i??""));return{alkali:n,words:[e,[n,o].filter(Boolean).join(" ")].filter(Boolean).join(": ")}};var Hs=e=>`/${e}/lye_from`,qs=e=>`/${e}/blend`;function Us(e){let t=fe("studio","/lye_solutions").length>0||g("run",Hs(e))!==void 0,n=fe("studio","/blends").length>0||g("run",qs(e))!==void 0;if(!t&&!n)return d;let o=[...qv(e),Uv(e)].filter(Boolean).join(", ");return F({name:`/${e} ready`,pointers:[Hs(e),qs(e)],summary:`From what stands ready${o&&`: ${o}`}`,body:()=>s`${t?_M(e):d} ${n?bM(e):d}`})}function qv(e){let t=g("run",Hs(e));return typeof t=="string"?[t]:te("run",Hs(e)).map(String)}var gM=e=>te(e,"/alkali").map(t=>String($(t,"/alkali")));function _M(e){let t=Hs(e),n=Y("run",t),o=qv(e),i=gM(e),r=[...new Set([...fe("studio","/lye_solutions"),...o])],l=r.filter(m=>o.includes(m)||i.includes(cr(m).alkali)),u=r.filter(m=>!l.includes(m)),c=Fe("run",t),p=m=>{let{alkali:_}=cr(m),b=o.includes(m),y=o.filter(Ue=>Ue!==m&&(b||cr(Ue).alkali!==_)),T=b?y:[...y,m],V=T.length>1?T:T[0];q("run",`${m}: ${b?"no":"yes"}`,t,V)};return s`<div class="field asked ${c?"wants":""}">
    <p class="question" id="${n}-label">
      Lye solution that is weighed in place of dry ${i.length?Ee(i):"alkali"}
    </p>
    <div class="choice" role="group" id=${n} tabindex="-1" aria-labelledby="${n}-label">
      ${l.map(m=>s`<button type="button" aria-pressed=${o.includes(m)?"true":"false"} @click=${()=>p(m)}>
            ${cr(m).words}
          </button>`)}
    </div>
    ${be(n,c,o.length?void 0:"None chosen: the alkali is weighed dry.")}
    ${u.length?s`<p class="hint">Of another alkali than this formula's: ${u.map(m=>cr(m).words).join(", ")}.</p>`:d}
  </div>`}var Uv=e=>{let t=g("run",qs(e));return typeof t=="string"?t:O("run",`${qs(e)}/name`)};function $M(e,t){let n=te(e,"/fats").map(({fat:r})=>String(r)),o=new Set(n.flatMap(r=>{let l=a.fats.find(({id:u})=>u===r);return l?[l.id,l.name,l.inci,...l.also_called]:[r]})),i=new Set([...o].map(r=>r.toLowerCase()));return Hv(t).every(r=>i.has(r.toLowerCase()))}var Qm="\0singly";function bM(e){let t=qs(e),n=Uv(e),o=[...new Set([...fe("studio","/blends"),...n?[n]:[]])],i=o.filter(u=>u===n||$M(e,u)),r=o.filter(u=>!i.includes(u)),l=g("run",`${t}/share`)!==void 0;return s`${A({question:"Blend of fats that is weighed",at:t,chosen:n||Qm,answers:[[Qm,"None: each fat by itself"],...i.map(u=>[u,u])],puts:u=>u===Qm?void 0:u,hint:r.length?`With fats that this formula has not: ${r.join(", ")}.`:void 0})}
  ${n?l?s`<div class="row">
            ${h({label:`${n}: share of all fats of the formula`,at:`${t}/share`,unit:"%",optional:!0,short:!0})}
          </div>`:s`<p class="hint">As much of it is taken as the shares of its fats have room for.</p>
            <button
              type="button"
              @click=${()=>q("run","Its share",t,{name:n,share:""},oe("run",`${t}/share`))}
            >
              Take a share of my own
            </button>`:d}`}var Oo="/pour/layers",Po={at:Oo,in_order:!0},Gm=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],Fd=()=>k(Po);function wM(){let e=t=>Fd().some(n=>t in n);return Gm.map(([t])=>t).find(e)??(e("rest")?"depth":"parts")}function Kv(e){let t=Fd(),n=wM();return t.length?s`<h3>
      Layers, lowest first ${e&&we(e)?s`<small>${we(e)}</small>`:d}
    </h3>
    ${A({question:"All of them by",at:Oo,is_told_elsewhere:!0,chosen:n,answers:Gm,puts:o=>vM(o,e)})}
    <div class="items">${t.map((o,i)=>kM(o,i,n,e))}</div>
    ${ee(Po,"One more layer on top",()=>U(Po,{name:yM(t),[n]:""},"layer"))}`:s`<p class="choice">
      ${ee(Po,"Pour it in layers",()=>U(Po,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function yM(e){for(let t=e.length+1;;++t)if(!e.some(n=>n.name===`Layer ${t}`))return`Layer ${t}`}function Jv(e,t,n){let o=e?.pour.layers?.[n];return o?.name===t.name?o:void 0}function vM(e,t){let n=Fd(),o=a.is_old?void 0:t,i=(r,l)=>{let u=Jv(o,r,l);return e==="parts"||!u||e==="depth"&&"tilted"in r?"":e==="depth"?`${S(u.to_mm-u.from_mm,3)} mm`:`${S(u.mass_each_g,3)} g`};return n.map((r,l)=>{let u=Od(l),c=e!=="parts"&&n.length>1&&l===n.length-1;return{...u,...c?{rest:!0}:{[e]:i(r,l)}}})}var Od=e=>ge("run",`${Oo}/${e}`,[...Gm.map(([t])=>t),"rest"]);function kM(e,t,n,o){let i=`${Oo}/${t}`,r=String(e.name)||`Layer ${t+1}`,l=Jv(o,e,t);return s`<div class="part" id=${E(Po,t)} role="group" aria-label="Layer ${r}">
    ${l&&o?xM(o,l,t):s`<p class="part-title">${r}</p>`} ${W("run",i)}
    ${RM(e,t,n,r)}
    ${o&&l?l.colours.map((u,c)=>TM(o,u,t,c)):d}
    ${F({name:i,pointers:["name","colours","tilted"].map(u=>`${i}/${u}`),summary:"Name, colours, tilt",body:()=>s` ${h({label:"Name of the layer",at:`${i}/name`})} ${PM(i,r)} ${OM(i,t)}
        ${J(Po,t,r)}`})}
  </div>`}function xM(e,t,n){return I({key:`pour.layer.${n}`,label:t.name,note:`${Pc($e(a.units,t.to_mm-t.from_mm))} thick, ${Pc(H(a.units,t.mass_each_g))} each`,shown:t.g_text===void 0?H(a.units,t.g):X(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.g`})}function TM(e,t,n,o){return I({key:`pour.layer.${n}.${o}`,label:t.name,note:t.teaspoons?`about ${S(t.teaspoons,1)} tsp`:"",shown:si(a.units,t),size:"weigh",of:`${e.place}.pour.layers.${n}.colours.${o}.g`})}function RM(e,t,n,o){if(n==="parts")return SM(e,t,o);let i="rest"in e;return s`${i?d:h({label:`${o}, ${n}`,at:`${Oo}/${t}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?DM(t,n):AM(t,n)}
    >
      Takes the rest
    </button>`}function SM(e,t,n){let o=`${Oo}/${t}/parts`,i=r=>()=>{f({typed:void 0}),Z("run",o,Math.max(1,(Number(e.parts)||0)+r))};return s`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${h({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function AM(e,t){let n=Fd().map((o,i)=>i===e?{...Od(i),rest:!0}:o.rest?{...Od(i),[t]:""}:o);q("run","takes the rest",Oo,n)}function DM(e,t){let n=`${Oo}/${e}`;q("run","amount of the layer",n,{...Od(e),[t]:""},oe("run",`${n}/${t}`))}function PM(e,t){let n={at:`${e}/colours`,in_order:!0};return s`${k(n).map((o,i)=>{let r=`${n.at}/${i}`,l=String(o.name)||`colour ${i+1}`;return s`<div class="part" id=${E(n,i)} role="group" aria-label="${l} in ${t}">
      <div class="part-head">
        <p class="part-title">Colour: ${l}</p>
        ${J(n,i,l)}
      </div>
      ${W("run",r)}
      <div class="row">
        ${h({label:"Colour",at:`${r}/name`})}
        ${h({label:"Rate",at:`${r}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${h({label:"Bulk density (for spoons)",at:`${r}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${vo("run",r,l)}
    </div>`})}
  ${ee(n,"Add a colour",()=>U(n,{name:"",rate:""},"colour"))}`}var zv=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function OM(e,t){let n=`${e}/tilted`,o=g("run",`${n}/low_side`);return t===k(Po).length-1&&g("run",n)===void 0?s`<p class="hint">The last layer is poured level.</p>`:nt({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>s`${h({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${A({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:zv,puts:r=>r})}
        ${F({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!zv.some(([r])=>r===o),body:()=>h({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var on=()=>$(a.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function Ym(e,t){let n=e.pour.depth_mm+e.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(t*2)/2),Math.floor(n*2)/2-.5),i=on()==="depth"?n-o:o;f({typed:void 0}),Z("run",`/pour/line/${on()}`,`${S(i,2)} mm`)}function Vv(e){let t=e.pour.depth_mm+e.pour.below_brim_mm,n=Vt($(a.run.now,`/pour/line/${on()}`));return n===void 0?e.pour.below_brim_mm:on()==="depth"?t-n:n}function FM(e,t){let n=e.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(e.pointerId);let i=l=>t((l.clientY-e.clientY)/o.height),r=()=>{n.removeEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.removeEventListener(l,r)};n.addEventListener("pointermove",i);for(let l of["pointerup","pointercancel"])n.addEventListener(l,r)}function MM(e){if(!a.measured)return d;let t=e.pour.depth_mm+e.pour.below_brim_mm,n=Vv(e),{share:o,h:i}=Rv(e,t-n),r=c=>FM(c,p=>Ym(e,n+p*i)),l=c=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[c.key];p!==void 0&&(c.preventDefault(),Ym(e,n+p))},u=c=>c&&(c.style.top=`${100*o}%`);return queueMicrotask(()=>u(document.querySelector(".line-handle")??void 0)),s`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(t)}
    aria-valuenow=${S(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${x($e(a.units,n))} below the brim"
    @pointerdown=${r}
    @keydown=${l}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function LM(e){let{pour:t}=e,n=x($e(a.units,t.below_brim_mm)),o=t.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=e.cut?"the loaf":"each",r=we(e);return Re(s`${o}, <b>${x(H(a.units,t.mass_each_g))}</b> ${i}; make
      <b>${x(H(a.units,t.make_g))}</b>${r?` for ${r}`:""}.`)}var Qv=()=>on()==="depth"?"Depth":"Below brim";function Gv(e){return ut({name:"pour",title:"Pour",drawing:e&&(()=>Do("pour",e)),result:e?LM(e):Re(`${BM()}.`),about:[["run","/pour"]],form:()=>s`${e?CM(e):WM()}
        <div class="more">
          ${Md("pour")} ${Us("pour")} ${Kv(e)} ${Dl("pour")}
        </div>`})}function BM(){let e=O("run",`/pour/line/${on()}`);return e?`${e} ${on()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function CM(e){let{pour:t}=e,n=`${e.place}.pour`,o=i=>()=>Ym(e,Vv(e)+i);return s`<div class="side">
      ${Ao("pour",e,MM(e))} ${Yv(e)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${h({label:Qv(),at:`/pour/line/${on()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${I({key:"pour.each",label:"Weigh into each",shown:H(a.units,t.mass_each_g),note:`${S(t.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${I({key:"pour.mm",label:"1 mm more or less",shown:ke(a.units,t.ml_per_mm,2),note:`${Je(t.ml_per_mm*t.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${I({key:"set-up.pour.make",label:"Base to make",note:we(e),shown:H(a.units,t.make_g),of:`${n}.make_g`})}
      ${I({key:"pour.density",label:"Density",shown:[`${t.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var WM=()=>s`<div class="side">
    ${Yv()} ${W("run","/pour/line")}
    ${h({label:Qv(),at:`/pour/line/${on()}`,unit:"mm"})}
  </div>`,Md=e=>s`<button type="button" @click=${()=>at(e)}>
    Change the formula of the ${e==="pour"?"base":"topping"}
  </button>`;function Yv(e){let t=n=>{if(n===on())return;let o=e&&!a.is_old?e.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;q("run","pour line","/pour/line",{[n]:o===void 0?"":`${S(o,3)} mm`})};return ce("The pour line is measured",on(),[["below_brim","From the brim"],["depth","From the floor"]],t)}var IM=[0,50,80,100];function Zv(e){let t=e?.pipe;return ut({name:"pipe",title:"Pipe",drawing:t&&(()=>Do("pipe",e)),result:t?EM(e,t):Re("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>t?NM(e,t):jM()})}function EM(e,t){let n=we(e);return Re(s`Pipe <b>${S(t.volume_each_ml,0)} ml</b> on each, ${x(H(a.units,t.mass_each_g))} at this
      whipped density; make <b>${x(H(a.units,t.make_g))}</b>${n?` for ${n}`:""}.`)}function NM(e,t){return s`<div class="side">
      ${Ao("pipe",e)}
      ${I({key:"pipe.each",label:"Topping on each",shown:ke(a.units,t.volume_each_ml),note:`${S(t.in_headspace_each_ml,1)} ml of it below the brim`,of:`${e.place}.pipe.volume_each_ml`})}
      ${I({key:"set-up.pipe.make",label:"Topping to make",note:we(e),shown:H(a.units,t.make_g),of:`${e.place}.pipe.make_g`})}
      ${I({key:"pipe.density",label:"Whipped density",note:`overrun ${S(t.overrun_percent,0)} %`,shown:[`${t.density_g_per_ml} g/ml`,""],of:`${e.place}.pipe.density_g_per_ml`,term:"overrun"})}
      ${Md("pipe")} ${Us("pipe")}
    </div>
    <div class="weights">${$p(t)} ${nk()} ${HM(e)} ${VM(e)}</div>
    <div class="more">${_p(t)} ${gp()}</div>`}var zs=e=>e===0?"pipe":`pipe.whipping${e}`,Ks=(e,t)=>`${e.place}.pipe.whippings.${t}`;function Xv(e,t){let n=gl(e,t);return n?s`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:d}function jM(){return s`<div class="more">${_p()}</div>
    <div class="side">${nk()} ${g("run","/pipe/whip_now")===void 0?d:tk()}</div>
    <div class="weights">${$p()} ${Md("pipe")} ${Us("pipe")}</div>
    <div class="more">${gp()}</div>`}var ek=e=>we(e)?s`<small>${we(e)}</small>`:d;function HM(e){return s`<h3>Today's bowl ${ek(e)}</h3>
    ${tk()} ${e.whippings.map((t,n)=>qM(e,t,n))}`}function qM(e,t,n){let o=t.pieces_now,i=o==null?0:t.pieces-o,r=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${t.pieces} to make.`;return s`${Xv(e,t)}
  ${o==null?d:I({key:`${zs(n)}.now`,label:"Enough for",note:r,shown:[z(o,"piece"),""],size:"weigh",of:`${Ks(e,n)}.pieces_now`})}
  ${zM(e,t,n)}`}function tk(){let e=g("run","/pipe/whip/holds"),t=e===void 0?hs():{holds:e,net:""};return nt({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:t,body:UM})}function UM(){return s`<div class="row">
    ${h({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${gs("/pipe/whip_now")}
  </div>`}function zM(e,t,n){return t.readings?.length?F({name:`${zs(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>KM(e,t,n)}):d}function KM(e,t,n){return s`<table class="readings">
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
        ${t.readings?.map(o=>s`<tr class=${o.planned?"planned":""}>
              <th scope="row">${S(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${S(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${ei(`${zs(n)}.readings`,"Show the calculation",`${Ks(e,n)}.readings`)}`}function nk(){let e="/pipe/fills_headspace",t=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(O("run",e))?.[1]?.replace(",",".")),n=Ve("run",e);return s`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${wo("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${IM.map(o=>s`<button
            type="button"
            aria-pressed=${o===t?"true":"false"}
            @click=${()=>Z("run",e,`${o} %`)}
          >
            ${JM(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${h({label:"Headspace filled, as a share",at:e,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function JM(e){let t=52*(e/100);return s`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${R`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-t/2} y="18" width=${t} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function VM(e){let t=e.whippings.map(i=>({one:i,words:QM(i)})).filter(({words:i})=>i),n=e.whippings[0],o=n?.limits??[];return!n||!o.length&&!t.length?d:s`<h3>Limits of whisk, bowl and time ${ek(e)}</h3>
    ${t.map(({one:i,words:r})=>s`${Xv(e,i)}
          <p>${r}.</p>`)}
    <ul class="limits">
      ${o.map(i=>s`<li class=${i.sets?"binds":""}>
            ${i.sets?s`<strong>Sets the batch: </strong>`:d}${i.text}
          </li>`)}
    </ul>
    ${ei("pipe.limits","How the limits come about",`${Ks(e,0)}.limits`)}`}function QM({piping_s:e,lye_spoonfuls:t}){return[e?`${bo(e)} of piping`:"",t?`${t.count} spoonfuls of lye, ${bo(t.altogether_s)}`:""].filter(Boolean).join("; ")}function ik(e){return ut({name:"lye",title:"Lye",drawing:YM,result:e?ok(e).map(GM):Re("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>s`${e?s`<div class="more jugs">${ok(e).map(ZM)} ${eL(e)}</div>`:d}
        <div class="more">${$v()} ${bv(e)}</div>`})}function ok(e){let{pieces:t}=e.batch,n={slot:"pour",title:e.pipe?"Lye for the base":"Lye",batter:e.pour,place:`${e.place}.pour`,pieces:t,key:"pour"},o=e.whippings.map((i,r)=>{let l=gl(e,i);return{slot:"pipe",title:`Lye for the topping${l&&`, ${l}`}`,batter:i,place:Ks(e,r),pieces:t,key:zs(r)}});return[n,...o]}function GM({title:e,batter:t,slot:n,pieces:o}){let i=_o(n,o).length?" \u26A0":"";return Re(s`${e}: ${S(t.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${lt(t.superfat_percent.effective)}${i}</b>.`)}var YM=()=>s`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${R`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function ZM({slot:e,title:t,batter:n,place:o,pieces:i,key:r}){let{effective:l}=n.superfat_percent,u=_o(e,i).length>0,c=`danger-set-up-${r.replaceAll(".","-")}`,p=r===e;return s`<div class="jug">
    <h3>${t} <small>${n.formula}</small></h3>
    ${I({key:`set-up.${r}.strength`,label:"Lye strength",note:`water ${S(n.water_to_pure_alkali,2)} : 1 to alkali; water ${S(n.water_percent_of_fats,1)} % of the fats`,shown:[`${S(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${I({key:`set-up.${r}.superfat`,label:"Superfat as weighed",shown:[`${lt(l)}${u?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`,term:r==="pour"?"superfat_as_weighed":void 0})}
    ${Xr(e,c,i)} ${rk(n.superfat_percent)} ${XM(n,o,r)}
    ${!p||g(e,"/superfat")===void 0?d:h({label:"Planned superfat",of:e,at:"/superfat",unit:"%",described_by:u?c:void 0,hint:a.formulas[e]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function rk(e){let{low:t,high:n,likely_low:o,likely_high:i,uncertainties:r}=e,l=`It lies between ${lt(t)} and ${lt(n)}, as lots, purity and scales may fall`,u=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${lt(o)} and ${lt(i)}.`,c=r[0],p=c?s` Most of the doubt is ${c.cause}: ${c.remedy}.`:d;return Dc(t)?s`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${l}${u}
    ${c?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:s`<p class="aside of-plan">${l}${u} Some fat is left over even at the lowest.${p}</p>`}function XM(e,t,n){return e.heat?s`${sk(e.heat)} ${ei(`${n}.heat`,"How the heat is worked out",`${t}.heat`)}`:d}function sk(e){let t=i=>x(g$(a.units,i)),n=e.cooling.map(i=>`${i.shortest_min*60?bo(i.shortest_min*60):"at once"} to ${bo(i.longest_min*60)} in ${i.in}`),o=e.peak_c===null?"The KOH solution warms as it is diluted; how far is not known.":`Water at ${t(e.water_at_c)}: the lye may reach ${t(e.peak_c)}; it boils at ${t(e.boils_at_c)}.`;return s`<p class="aside of-plan">
    ${o}${n.length?` To cool: ${n.join("; ")}.`:""}${e.at_pour_c===null?"":` Lye and fats meet at about ${t(e.at_pour_c)}.`}
  </p>`}function eL(e){let t=e.lye_pot;if(!t)return d;let{units:n}=a,o=(i,r,l,u,c="")=>I({key:`pot.${i}`,label:r,note:c,shown:l,size:"weigh",of:`${e.place}.lye_pot.${u}`});return s`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${S(t.strength_percent,1)} %${we(e)&&`; ${we(e)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",X(n,ae(t,"water_")),"water_g")}
    ${t.alkalis.map((i,r)=>o(`alkali.${r}`,`In the pot: ${i.name}`,X(n,ae(i,""),"down"),`alkalis.${r}.g`))}
    ${o("lye","Lye solution in the pot",X(n,ae(t,"lye_")),"lye_g",tL(t))}
    ${t.shares.map((i,r)=>s`${o(`share.${r}`,`Out of it for ${i.batter}`,X(n,ae(i,"lye_"),"down"),`shares.${r}.lye_g`,`superfat then ${lt(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${r}`,`and plain water to ${i.batter}`,X(n,ae(i,"top_up_")),`shares.${r}.top_up_g`):d}
        ${Xr(r===0?"pour":"pipe","",e.batch.pieces)}
        ${i.superfat?rk(i.superfat):d}`)}
    ${t.left_g?s`<p class="aside of-plan">
            ${x(X(a.units,{g:t.left_g,g_text:t.left_g_text,oz_text:t.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:d}
    ${t.heat?sk(t.heat):d}
  </div>`}function tL(e){if(e.full_pot_g===null)return"";let{g_text:t,oz_text:n,...o}=ae(e,"lye_"),i=X(a.units,{...o,g:e.full_pot_g,g_text:e.full_pot_g_text,oz_text:e.full_pot_oz_text});return`${x(i)} with the pot: make up with water to that after cooling`}var Js=new Map,nL=()=>Js.clear(),oL=e=>typeof e?.owned=="number"?e.owned:void 0;function Zm(e){let t=st(e,a.files?.moulds);return Js.has(t)||(Js.set(t,void 0),iL(t)),Js.get(t)}async function iL(e){try{Js.set(e,oL(ye((await ze(e)).text))),Q()}catch(t){if(!(t instanceof w))throw t}}async function ak(e,t){let n=Zm(e);n!==void 0&&(Z("studio",t,n),D(`${n} kept in the studio`),await rL(st(e,a.files?.moulds)),se())}async function rL(e){let t=await We(it,e);t.shipped||t.theirs||(Ie(t,M(t.now,"/owned",void 0)),await ln(t),nL())}var Ld=["monday","tuesday","wednesday","thursday","friday","saturday","sunday"],Bd=e=>e[0].toUpperCase()+e.slice(1),Cd=e=>h({...e,of:"studio"});function lk(){return!Un()&&a.run.file&&a.open.has("folded studio days")&&tr("run"),s`<section class="questions of-studio" aria-label="Making days">
    <h3>Making days</h3>
    ${F({of:"studio",name:"days",pointers:["/days",...nn()?[]:["/work"]],summary:s`<span>When you work${s`<small>${sL()}</small>`}</span>`,body:aL})}
  </section>`}function sL(){let e=g("studio","/days/making")??{};return Ld.filter(t=>e[t]).map(t=>`${Bd(t)} ${String(e[t])}`).join(", ")}var aL=()=>s`<p class="hint">
      Hours on each day that you make, cast and pack; blank on days without. A run's days are planned into them.
    </p>
    <div class="row">
      ${Ld.map(e=>Cd({label:Bd(e),at:`/days/making/${e}`,unit:"h",optional:!0,takes_part:!0,short:!0}))}
    </div>
    ${W("studio","/days")} ${W("studio","/days/making")} ${lL()} ${dL()} ${cL()}
    ${nn()?s`<p class="hint">How long a batch, a piece and packing take you stands under Work.</p>`:s`<p class="question">How long the work takes you</p>
            <div class="row">${id(g("studio","/days")!==void 0)}</div>
            ${W("studio","/work")}`}`;function lL(){let e="/days/small_jobs",t=Y("studio",e),n=te("studio",e),o=l=>{let u=Ld.filter(p=>p===l!==n.includes(p)),c=p=>zn(M(p,e,u.length?[...u]:void 0),"/days");bt("studio",`${Bd(l)}: ${n.includes(l)?"no":"yes"}`,c)},i=Ve("studio",e),r=Ld.filter(l=>n.includes(l)||!O("studio",`/days/making/${l}`));return s`<div class="field asked ${i?"wants":""}">
    <p class="question" id="${t}-label">Other days on which you are there to unmould, cut and set to chill</p>
    <div class="choice" role="group" id=${t} tabindex="-1" aria-labelledby="${t}-label">
      ${r.map(l=>s`<button type="button" aria-pressed=${n.includes(l)?"true":"false"} @click=${()=>o(l)}>
            ${Bd(l)}
          </button>`)}
    </div>
    ${be(t,i,"Without any, these wait for a making day.")}
  </div>`}var Vs={of:"studio",at:"/days/off",and:e=>zn(e,"/days")};function dL(){return s`<p class="question">Days off and holidays</p>
    ${k(Vs).map((e,t)=>uL(String(e),t))}
    ${ee(Vs,"Add a day off",()=>U(Vs,"","A day off"))}`}function uL(e,t){let n=`/days/off/${t}`,[o,i=""]=e.split("/"),r=Y("studio",n),l=Fe("studio",n),u=(m,_)=>Z("studio",n,_&&_!==m?`${m}/${_}`:m),c=(m,_,b,y)=>s`<div class="field short ${l?"wants":""}">
      <label for=${m}>${_}</label>
      <input
        id=${m}
        type="date"
        .value=${P(b)}
        @input=${T=>y(T.target.value)}
        @blur=${ni}
        aria-invalid=${l?"true":"false"}
        aria-describedby=${l?`${r}-said`:d}
      />
      ${m===r?be(r,l):d}
    </div>`,p=o?`off on ${N(o)}`:`day off ${t+1}`;return s`<div class="row" id=${E(Vs,t)} role="group" aria-label=${p}>
    ${c(r,"First day off",o,m=>u(m,i))}
    ${c(`${r}-last`,"Last, if there are several",i,m=>u(o,m))} ${J(Vs,t,p)}
  </div>`}function cL(){let e=(t,n,o)=>Cd({label:n,at:`/days/${t}`,count:!0,optional:!0,short:!0,hint:o});return s`<p class="question">What limits the work of a day; left blank, it sets no limit</p>
    <div class="row">
      ${e("pots_owned","Pots for the base")} ${e("bowls_owned","Bowls for the topping")}
      ${e("used_a_day","Uses of each on a day","Once, if blank; washed up in between.")}
      ${e("rack_places","Pieces that can cure at once")}
      ${Cd({label:"Decorations cast beforehand by at most",at:"/days/cast_beforehand",unit:"days",optional:!0,short:!0})}
    </div>
    ${pL()}
    ${$(g("studio","/days"),"/making")===void 0&&g("studio","/days")!==void 0?s`<p class="hint">Without the hours of a making day these are of no use.</p>`:d}`}var pL=()=>nt({of:"studio",at:"/days/one_lye_a_day",name:"the shared lye",title:"One pot of lye solution for several batches of a day",add:"Make one pot of lye solution for a day's batches",blank:{holds:"",saves:""},body:()=>{let e=(t,n,o,i={})=>Cd({label:n,at:`/days/one_lye_a_day/${t}`,unit:o,short:!0,...i});return s`<p class="hint">Made the evening before and shared by weight, where the batches' lyes are alike.</p>
        <div class="row">
          ${e("holds","Pot holds","l",{hint:"To the brim; filled to half."})}
          ${e("saves","Each further batch takes less by","min")}
          ${e("pot_tare","Empty pot","g",{optional:!0,hint:"Where the full one is weighed with it."})}
        </div>`}});var mL={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},dk=e=>({run:e,studio:e}),Xm=e=>dk(`/losses/${e}`);function ef(e,t){return mL[e].map(({name:n,label:o,unit:i,optional:r})=>He(dk(`/losses/${e}/${n}`),{label:t?`${t}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:r}))}var tf={holds:"",paid:""},Wd=e=>({of:"studio",at:`/packs/${j(e)}`,in_order:!0,and:(t,n)=>n?t:zi(zn(t,"/packs"),[`/serves_as/${j(e)}`])});function ck(e){let t=a.fats.find(n=>n.id===e||n.name===e);return t?[t.id,t.name,t.inci,...t.also_called]:[e]}function pk(e,t){let n=new Set(ck(t).map(o=>o.toLowerCase()));return fe("studio",e).find(o=>n.has(o.toLowerCase()))}var hi=e=>pk("/packs",e),mk=e=>It().includes(e)||a.fats.some(t=>t.id===e)?"g":void 0,fk="money packs";function hk(e){return s`${fe("studio","/packs").map(t=>fL(t,e))}
  ${fi({key:"pack",label:"Which material comes in packs?",offers:It(),taken:t=>hi(t)!==void 0,take:Id})}`}function fL(e,t){let n=Wd(e),o=ne(e);return s`<div class="part" role="group" aria-label="Packs of ${o}">
    <p class="part-title">${o}</p>
    ${k(n).map((i,r)=>gL(n,r,o,mk(e),t))}
    <div class="row">
      ${ee(n,s`Another pack of ${o}`,()=>U(n,tf,`A pack of ${o}`))}
      ${h({of:"studio",label:"Lost beside the batch",at:`/waste/${j(e)}`,unit:"%",optional:!0,takes_part:!0,short:!0})}
      ${hL(e)}
    </div>
  </div>`}var uk=e=>`/serves_as/${j(e)}`;function hL(e){let t=uk(e),n=O("studio",t),o=new Set(ck(e)),i=[...new Set([...It(),...fe("studio","/packs")])].filter(l=>!o.has(l)&&g("studio",uk(l))===void 0),r=l=>u=>zn(M(u,t,l||void 0),"/serves_as");return!n&&(It().some(l=>o.has(l))||!i.length)?d:me({label:"Another make of",of:"studio",at:t,answers:i.map(l=>[l,ne(l)]),unsaid:"nothing: a material of its own",optional:!0,take:l=>bt("studio",`${ne(e)}: ${l?ne(l):"a material of its own"}`,r(l))})}function gL(e,t,n,o,i){let r=`${e.at}/${t}`,l=(c,p,m={})=>h({of:"studio",label:p,at:`${r}/${c}`,short:!0,...m}),u=g("studio",`${r}/density`)!==void 0||Ve("studio",`${r}/holds`);return s`<div class="row" id=${E(e,t)} role="group" aria-label="Pack ${t+1} of ${n}">
    ${l("holds","One pack holds",{unit:o,hint:o?void 0:"Such as 50 pieces, or 1 kg"})}
    ${l("paid","Paid for it",{told:i})} ${_L(r)}
    ${l("as_of","Day of the price",{optional:!0,date:!0})}
    ${u?l("density","Density of what it holds",{unit:"g/ml",optional:!0}):d}
    ${J(e,t,`pack ${t+1} of ${n}`)}
  </div>`}function _L(e){let t=`${e}/from`,n=fe("studio","/sellers");return n.length?me({label:"From",of:"studio",at:t,answers:n.map(o=>[o,o]),unsaid:"not given",optional:!0}):h({of:"studio",label:"From",at:t,optional:!0,short:!0})}function Id(e){let t=`/packs/${j(e)}`,[n,o]=[`/prices/${j(e)}`,`/money/prices/${j(e)}`],i=nr().length?g("run",o):void 0,r=[i,g("studio",n)].flatMap(bL),l=r.length?[...r,tf]:[tf];zt([["studio",c=>$L(M(zi(c,[n]),t,l))],...i!==void 0?[["run",c=>zi(c,[o])]]:[]]),D(r.length?`The price of ${ne(e)} is its first pack now`:`${ne(e)} added`),Qe("studio",fk),C(Gt(E(Wd(e),l.length-1)))}var $L=e=>$(e,"/currency")?e:M(e,"/currency",ld());function bL(e){let t=$(e,"/paid");if(!t)return[];let n=$(e,"/confirmed");return[{holds:$(e,"/for")??"",paid:t,...n===void 0?{}:{confirmed:n}}]}var gk=e=>s`<button
    type="button"
    aria-label="Another pack size of ${ne(e)}"
    @click=${()=>Id(e)}
  >
    Another pack size
  </button>`;function _k(e){let t=hi(e),n=te("studio",Wd(t).at).length,o=()=>{Qe("studio",fk),C(Gt(E(Wd(t),0)))};return s`<div class="row">
    <p>${ne(e)}: by ${n===1?"its pack":`its ${n} packs`}</p>
    <button type="button" aria-label="To its packs: ${ne(e)}" @click=${o}>To its packs</button>
  </div>`}function $k(){let e=t=>`/have/${j(t)}`;return s`${fe("studio","/have").map(t=>{let n=mk(t),o=n?void 0:"Such as 12 pieces, or 1 kg";return s`<div class="row">
      ${h({of:"studio",label:ne(t),at:e(t),unit:n,hint:o,short:!0})}
      ${oi("studio","/have",t,ne(t))}
    </div>`})}
  ${fi({key:"have",label:"Which material stands on the shelf?",offers:It(),taken:t=>pk("/have",t)!==void 0,take:t=>q("studio",`${ne(t)} added`,e(t),"",oe("studio",e(t)))})}`}var bk=({key:e})=>`money ${e}`;function vk(){if(!nn())return d;let e=yL(ld());return!Un()&&e.some(t=>a.open.has(`folded studio ${bk(t)}`))&&Vl(),s`<section class="questions money of-studio" aria-label="Buying and selling">
    <h3>Buying and selling</h3>
    ${wL()}
    <div class="folds">
      ${e.map(t=>F({of:"studio",name:bk(t),pointers:t.pointers,summary:s`<span>${t.title}${t.told?s`<small>${t.told}</small>`:d}</span>`,body:t.body}))}
    </div>
  </section>`}var wL=()=>g("run","/money/currency")===void 0?d:s`<div class="row">
        ${gi({label:"Currency of the studio",at:"/currency",optional:!0,short:!0})}
      </div>`,gi=e=>h({...e,of:"studio"}),Ed=e=>fe("studio",e).map(ne).join(", ");function yL(e){let t=(i,r,l={})=>gi({label:r,at:i,told:e,short:!0,...l}),n=(i,r)=>t(i,r,{optional:!0,takes_part:!0}),o=(i,r="")=>{let l=O("studio",i);return l&&`${l}${r}`};return[{key:"packs",title:"Packs",pointers:["/packs","/waste","/serves_as"],told:Ed("/packs"),body:()=>hk(e)},{key:"sellers",title:"Sellers",pointers:["/sellers"],told:Ed("/sellers"),body:()=>kL(t)},{key:"have",title:"On the shelf",pointers:["/have"],told:Ed("/have"),body:$k},{key:"packaging",title:"Packaging",pointers:["/packaging"],told:k(pr).map(i=>ne(String($(i,"/material")))).join(", "),body:TL},{key:"work",title:"Work",pointers:["/work"],told:o(di("paid_an_hour"),` ${e} an hour`),body:()=>SL(t)},{key:"overhead",title:"Overhead",pointers:["/overhead"],told:o("/overhead/each_batch",` ${e} each batch`),body:()=>s`<p class="hint">Rent, power, cleaning and the like.</p>
          <div class="row">
            ${n("/overhead/each_batch","Each batch")} ${n("/overhead/each_piece_made","Each piece made")}
          </div>`},{key:"tax",title:"Tax on sales",pointers:["/tax"],told:o("/tax/rate"),body:AL},{key:"fees",title:"Fees of selling",pointers:["/fees"],told:o("/fees/of_price"," of the price"),body:()=>s`<div class="row">
          ${gi({label:"Of what the buyer pays",at:"/fees/of_price",unit:"%",optional:!0,takes_part:!0,short:!0})}
          ${n("/fees/each_order","Each order")}
        </div>`},{key:"asking",title:"Ways of selling",pointers:["/asking","/price_endings"],told:Ed("/asking"),body:()=>DL(t)}]}var vL=e=>(t,n)=>Object.entries(t.packs??{}).reduce((o,[i,r])=>r.reduce((l,{from:u},c)=>u===e?M(l,`/packs/${j(i)}/${c}/from`,n):l,o),t);function kL(e){let t=(n,o)=>`/sellers/${j(n)}/${o}`;return s`${fe("studio","/sellers").map(n=>s`<div class="part" role="group" aria-label=${n}>
        <div class="part-head">
          <p class="part-title">${n}</p>
          ${oi("studio","/sellers",n)}
        </div>
        <div class="row">
          ${as({of:"studio",at:"/sellers",name:n,label:"Seller's name",also:vL(n)})}
          ${e(t(n,"postage"),"Postage of an order",{optional:!0,hint:"0 if you fetch it"})}
          ${e(t(n,"postage_free_from"),"Free from",{optional:!0})}
          ${gi({label:"From ordering to having it",at:t(n,"lead_time"),unit:"days",optional:!0,short:!0})}
        </div>
      </div>`)}
  ${Ki({of:"studio",at:"/sellers",label:"Another seller, by name",add:"Add the seller",blank:{},then:n=>oe("studio",t(n,"postage"))})}`}var pr={of:"studio",at:"/packaging"},xL=e=>!It().includes(e)&&!a.fats.some(t=>t.id===e);function TL(){let e=t=>k(pr).some(n=>$(n,"/material")===t);return s`<p class="hint">What goes round each piece that is sold. Its price is that of its pack.</p>
    ${k(pr).map((t,n)=>RL(String($(t,"/material")??""),n))}
    ${fi({key:"packaging",label:"What goes round a piece?",offers:["/packs","/prices"].flatMap(t=>fe("studio",t)).filter(xL),taken:e,take:t=>U(pr,{material:t,each_piece:""},t)})}`}function RL(e,t){let n=hi(e)!==void 0||g("studio",`/prices/${j(e)}`)!==void 0;return s`<div class="row" id=${E(pr,t)}>
    ${gi({label:`${ne(e)}, each piece`,at:`/packaging/${t}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
    ${n?d:s`<button type="button" aria-label="Say its price: ${e}" @click=${()=>Id(e)}>
            Say its price
          </button>`}
    ${J(pr,t,e)}
  </div>`}function SL(e){let t=g("studio","/work")!==void 0;return s`<div class="row">
      ${e(di("paid_an_hour"),"Paid an hour",{optional:!0,takes_part:!0,is_due:t})} ${id()}
    </div>
    ${W("studio","/work")}`}var wk=(e,t)=>A({of:"studio",question:e,at:`/tax/${t}`,chosen:O("studio",`/tax/${t}`)||void 0,answers:[["with tax","With tax"],["without tax","Without tax"]],puts:n=>n}),AL=()=>s`<p class="hint">Where you charge it and get back what you pay of it. If you are exempt, leave it out.</p>
    ${nt({of:"studio",at:"/tax",name:"the tax",title:"Tax on sales",add:"I charge tax",blank:{rate:""},body:()=>s`<div class="row">${gi({label:"Rate",at:"/tax/rate",unit:"%",short:!0})}</div>
          ${wk("The prices you pay are","prices_paid")} ${wk("The prices you ask are","prices_asked")}`})}`,yk=[["margin","A margin"],["markup","A markup"],["price","A price as set"]];function DL(e){let t=n=>`/asking/${j(n)}`;return s`${fe("studio","/asking").map(n=>PL(n,t(n),e))}
  ${Ki({of:"studio",at:"/asking",label:"Another way, such as retail",add:"Add the way",blank:{},then:n=>oe("studio",t(n))})}
  ${OL(e)}`}function PL(e,t,n){let o=g("studio",t)??{},i=yk.map(([l])=>l).find(l=>o[l]!==void 0),r=l=>gi({label:l,at:`${t}/${i}`,unit:"%",short:!0});return s`<div class="part" role="group" aria-label=${e}>
    <div class="part-head">
      <p class="part-title">${e}</p>
      ${oi("studio","/asking",e)}
    </div>
    <div class="row">${as({of:"studio",at:"/asking",name:e,label:"What you call it"})}</div>
    ${A({of:"studio",question:"Its price comes by",at:t,chosen:i,answers:yk,puts:l=>({[l]:""}),then:l=>`${t}/${l}`})}
    ${i?s`<div class="row">
            ${i==="price"?n(`${t}/price`,"Price of a piece"):r(i==="margin"?"Margin, of the price":"Markup, on the cost")}
          </div>`:d}
  </div>`}var Qs={of:"studio",at:"/price_endings"},OL=e=>s`<p class="question">A price ends in</p>
    ${k(Qs).map((t,n)=>s`<div class="row" id=${E(Qs,n)}>
          ${e(`/price_endings/${n}`,`Ending ${n+1}`,{hint:"Such as 0.90"})}
          ${J(Qs,n,`ending ${n+1}`)}
        </div>`)}
    ${ee(Qs,"Add an ending",()=>U(Qs,"","An ending"))}`;var FL=e=>le()&&hi(e)===void 0&&nr().length>0;function kk(){if(!nn())return s`<button type="button" @click=${ML}>Add what you paid</button>`;let e=(t,n)=>{let o=`/${j(t)}/${n}`;return{run:ad.run+o,studio:ad.studio+o}};return s`<div class="row">
      ${He(xn,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${It().map(t=>hi(t)===void 0||g("run",e(t,"paid").run)!==void 0?s`<div class="row">
              ${He(e(t,"paid"),{label:`${ne(t)}, paid`,optional:!0,takes_part:!0,short:!0})}
              ${He(e(t,"for"),{label:`for how much ${ne(t)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
              ${FL(t)&&hn(e(t,"paid"))?gk(t):d}
            </div>`:_k(t))}
    </div>
    ${It().length?d:s`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function ML(){let e=le()?"studio":"run",t=e==="studio"?xn.studio:xn.run;q(e,"Prices added",t,"",oe(e,t))}var mr=e=>({run:e,studio:e}),nf=e=>({run:`/pipe/${e}`,studio:`/${e}`}),LL=mr("/scales"),xk=mr("/spoilage"),BL=mr("/pots");function of(e){return ut({name:"studio",title:"My studio",result:Re(CL()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>WL(e)})}function CL(){let e=a.beside.studio?.file;return e?s`What is the same in every run, kept in ${e}.`:s`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function WL(e){let t=IL(e),n=[...t.flatMap(o=>o.all),...dt()?[Ol]:[]];return s`${le()?d:s`<p class="choice">
              <button type="button" class="strong" @click=${()=>{Nc(n)}}>
                Keep these in my studio
              </button>
            </p>
            <p class="hint">
              They go into studio.json beside your runs; every run then takes from it what it does not say. Packs and
              sellers, your work, tax, fees and ways of selling can then be kept there too.
            </p>`}
    <div class="studio-sections">
      ${t.map(({title:o,all:i,body:r})=>s`<section class="questions" aria-label=${o}>
            <div class="part-head">
              <h3>${o}</h3>
              ${yo(o,i)}
            </div>
            ${r()}
          </section>`)}
    </div>
    ${le()?s`${vk()} ${Nv()} ${lk()}`:d}`}function IL(e){let t=wt(),n=[{title:"Scales",all:[LL],body:EL},{title:"Losses",all:[Xm("pour"),...t?[Xm("pipe")]:[]],body:()=>NL(t,e)},{title:"Rejects",all:[xk],body:HL},{title:"Pot and lye jug",all:[BL],body:qL},{title:"Moulds owned",all:Tk().map(({shared:o})=>o),body:zL},{title:"Prices paid",all:nr(),body:kk}];return t&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map(nf),body:UL},{title:"Weigh-cups",all:[],body:Rb}),le()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[dr],body:Km}),n}function EL(){let e=(t,n)=>s`${He(mr(`/scales/${t}/step`),{label:`${n}, smallest step`,unit:"g",short:!0,term:t==="large"?"scale_step":void 0})}
    ${He(mr(`/scales/${t}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return s`<div class="row">${e("large","Large scale")} ${e("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function NL(e,t){return s`<div class="row">
      ${ef("pour",e?"Base":void 0)} ${e?ef("pipe","Topping"):d}
    </div>
    ${t?jL(t):d}`}function jL({pour:e,pipe:t,...n}){let o=we({pour:e,pipe:t,...n}),i=(r,{in_pieces_g:l,lost_g:u})=>`${r}: ${x(H(a.units,l))} in the pieces, ${x(H(a.units,u))} lost.`;return s`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",e)} ${t?i("Topping",t):""}
  </p>`}var HL=()=>He(xk,{label:"Rejects",unit:"%",short:!0,optional:!0,term:"rejects"});function qL(){let e=(t,n,o)=>He(mr(`/pots/${t}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return s`<div class="row">
    ${e("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${e("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function UL(){let e=(n,o,i,r=!1)=>He(nf(n),{label:o,unit:i,short:!0,optional:!0,is_due:r,takes_part:n!=="bag_holds"}),t=n=>hn(nf(n))!==void 0;return s`<div class="row">
    ${e("bowl/holds","Bowl holds","l",t("bowl/whisk_needs"))}
    ${e("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${e("bag_holds","One bag holds","ml")}
    ${e("lye_spoon/holds","Lye spoon holds","ml",t("lye_spoon/time_between"))}
    ${e("lye_spoon/time_between","From one spoonful to the next","s",t("lye_spoon/holds"))}
  </div>`}function Tk(){return["/pour",...k(Ne).map((t,n)=>ar(n))].flatMap(t=>{let n=O("run",`${t}/mould`);return n?[{mould:n,shared:{run:rv(t),studio:`/moulds_owned/${j(jc(n))}`}}]:[]})}function zL(){return s`<div class="row">
    ${Tk().map(({mould:e,shared:t})=>{let n=a.files?.moulds.find(r=>r.file===e)?.name??e,o=hn(t)===void 0?Zm(e):void 0,i=()=>{ak(e,`/moulds_owned/${j(jc(e))}`)};return s`${He(t,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&le()?s`<button type="button" aria-label="Move it into my studio: ${o} of ${n}" @click=${i}>
              Move it into my studio
            </button>`:d}`})}
  </div>`}function rf(e){let t=e&&Ji(e);return s`${JL(e)}
    <div class="set-up">${Rk(t)} ${KL()} ${of(t)}</div>`}function Rk(e){return s`${Gv(e)} ${wt()?Zv(e):d}
  ${Dv()?Fv(e):d} ${Pv()?Lv(e):d}
  ${dt()?Iv(e):d} ${ik(e)} ${zm()?Ev(e?.whole):d}`}function KL(){return s`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${wt()?d:s`<button type="button" @click=${Sb}>Add a topping</button>${Ab()}`}
      ${hv()} ${Mb()}
      ${zm()?d:s`<button type="button" @click=${wv}>Draft the label</button>`}
    </div>
  </section>`}function Sk(e=d){return s`<div class="row">
    ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${Ui("Mould","/pour/mould",a.files?.moulds)}
    ${Ui("Base","/pour/formula",a.files?.formulas)}
    ${wt()?Ui("Topping","/pipe/formula",a.files?.formulas):d} ${e}
  </div>`}function JL(e){return s`<section class="order-of" aria-labelledby="run-title">
    ${typeof a.run.now.note=="string"?s`<p class="aside">${a.run.now.note}</p>`:d}
    ${Sk(e?VL(e):d)}
    <div class="batches">${e?vv(e):d} ${jm()} ${qm()}</div>
  </section>`}function VL(e){let{sell:t,make:n,fillings:o,cavities:i,casts:r,batches:l}=e.pieces,u=Ge(e)?`${l} batches, ${z(o,"filling")}`:_l(o,i);return I({key:"pieces.make",label:e.cut?"Bars to make":"Pieces to make",note:r!==n?`${r} ${e.cut?"loaves":"casts"}, ${u}`:u,shown:[String(n),t===n?"":`for ${t}`],size:"weigh",of:"pieces.make"})}function QL(){let t=(a.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>a.formulas[n]).filter(GL);return[Ft({part:"Run"},()=>[Sk(),jm(),qm()]),...t.map(n=>Ft({part:String(a.formulas[n].now.name||"Formula")},()=>gw(n))),Rk(),of()]}var GL=(e,t,n)=>n.findIndex(o=>a.formulas[o]===a.formulas[e])===t;x$(QL);var YL={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function Ak(e){let t=r=>r.severity==="danger",n=[...e.cautions.filter(t),...e.cautions.filter(r=>!t(r))],o=r=>s`<ul>
      ${r.map(l=>s`<li class=${l.severity}><strong>${YL[l.severity]??l.severity}</strong> ${l.text}</li>`)}
    </ul>`,i=n.filter(r=>r.severity==="note");return s`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(r=>r.severity!=="note"))}
    ${i.length?s`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:d}
  </section>`}function Dk(e,t){let n=e?.batches.findIndex(({numbers:l})=>l.includes(t))??-1;if(!e||n<0)return;let o=e.batches[n],i=t===1,r=o.weigh_out.filter(({vessel:l})=>l!=="melt"||i);return{plan:e,batch:o,place:`batches.${n}`,vessels:r,mark:o.mark}}function fr(e){let t=oo(e);return t?.finished_at?"done":t||io(e)?"under way":"not begun"}var ZL=()=>Math.max(a.plan?.pieces.batches??0,...a.bench.batches.map(({batch:e})=>e));function XL(e){let{chosen:t}=a.bench;if(t!==void 0&&t<=e)return t;let n=Array.from({length:e},(i,r)=>r+1),o=i=>n.find(r=>fr(r)===i);return o("under way")??o("not begun")??1}function sf(){let e=ZL(),t=XL(e),n=oo(t),o=Dk(a.plan,t);return{number:t,of:e,kept:n,planned:o,weights:n?Dk(n.plan,t):o}}var Tn=({kept:e})=>!e&&a.is_old,hr=({plan:e,batch:t})=>e.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===t.pieces));var eB=6,tB={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function Ok({number:e,of:t}){if(t<2)return d;let n=Array.from({length:t},(i,r)=>r+1),o=i=>`Batch ${i}, ${fr(i)}`;return t>eB?s`<select
      aria-label="Which batch is weighed"
      @change=${i=>Pk(Number(i.target.value))}
    >
      ${n.map(i=>s`<option value=${i} ?selected=${i===e}>${o(i)}</option>`)}
    </select>`:ce("Which batch is weighed",String(e),n.map(i=>[String(i),s`<span class="status" aria-hidden="true">${tB[fr(i)]}</span> ${i}<small>
          ${fr(i)}</small
        >`]),i=>Pk(Number(i)))}function Pk(e){Pg(e),D(`Batch ${e}, ${fr(e)}`)}var Nd="";function Fk(e){let{kept:t,number:n}=e;if(!t)return d;if(t.finished_at)return nB(e,t.finished_at);let i=(e.weights?.vessels??[]).flatMap(l=>l.rows).filter(({key:l})=>!ro(n,l).is_done).length,r=()=>i?Mk(t.id):void Wu(n);return s`<div class="batch-end">
    <p class="aside">Begun ${Bk(t.begun_at)}; its weights stay as they were then.</p>
    ${Nd===t.id?Lk(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{Wu(n)}):s`<button type="button" class=${i?"":"strong"} ?disabled=${io(n)} @click=${r}>
            This batch is done
          </button>`}
  </div>`}function nB({kept:e,number:t},n){let{id:o}=e;return s`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${Bk(n)}.</p>
    ${Nd===o?Lk("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{Cr(t)}):s`<button type="button" @click=${()=>Mk(o)}>Start this batch anew</button>`}
  </div>`}function Mk(e){Nd=e,Q(),C(L("batch-stays"))}function Lk(e,t,n){let o=()=>{Nd="",Q(),C(L("run-title"))};return s`<p><b>${e}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${t}</button>
    </div>`}var oB=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),Bk=e=>oB.format(new Date(e));var iB={pour:"Base",pipe:"Topping"},Ck=e=>new Map(e.flatMap(t=>t.rows.map(n=>[n.key,{row:n,vessel:t}])));function Wk(e,t){let[n,o]=[Ck(e),Ck(t)],i=[...e,...t].some(({batter:p})=>p==="pipe"),r,l=({row:p,vessel:m})=>{let _=!i||m.batter===r;return r=m.batter,(_||!r?"":`${iB[r]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},u=[...n].flatMap(([p,m])=>{let _=o.get(p)?.row;return _?.shown===m.row.shown?[]:[`${l(m)} ${m.row.shown}, ${_?`now ${_.shown}`:"now left out"}`]}),c=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${l(p)}, now ${p.row.shown}`);return[...u,...c]}var af=3,lf=new Map,df="";function rB(e){let{kept:t,weights:n,planned:o,of:i}=e;if(!t||t.finished_at||!n)return;let{complaint:r}=a;if(r&&!Af(r))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:B(r)};if(!o){if(!a.plan)return;let p=i>1?`the run has no batch ${e.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let l=Wk(n.vessels,o.vessels),u=new Set(hr(n).map(({text:p})=>p)),c=hr(o).flatMap(({text:p})=>u.has(p)?[]:[p]);return l.length||c.length?{told:l,dangers:c,mark:o.mark}:void 0}function Ik(e){let t=rB(e),{kept:n}=e;if(!t||!n)return d;if(lf.get(n.id)===t.mark)return lB(n.id);let o=t.dangers.length>0||t.refusal!==void 0;return s`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${sB(t)}
    </p>
    ${aB(t)}
    ${t.dangers.map(i=>s`<p class="danger"><strong>${_t}</strong> As it is now: ${i}</p>`)}
    ${df===n.id?cB(e):dB(e,t)}
  </div>`}function sB({told:e,refusal:t}){if(t!==void 0)return s`<strong>No weights can be given as it is now:</strong> ${t}.`;let n=e.length-af;return s`${e.slice(0,af).join("; ")}${n>0?` and ${n} more.`:"."}`}var aB=({told:e})=>e.length>af?s`<details>
        <summary>All ${e.length} changes</summary>
        <p>${e.join("; ")}.</p>
      </details>`:d;function lB(e){return s`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(lf.delete(e),Q())}>What has changed</button>
  </div>`}function dB(e,{mark:t,refusal:n}){let{id:o}=e.kept;return s`<div class="row">
    <button type="button" class="strong" @click=${()=>{lf.set(o,t),Q(),C(L("run-title"))}}>Keep weighing</button>
    ${n===void 0?s`<button type="button" @click=${()=>uB(e)}>Start this batch anew</button>`:d}
  </div>`}function uB(e){let{ticks:t,weigh_cup:n,id:o}=e.kept;if(!Object.keys(t).length&&n===void 0)return void Cr(e.number);df=o,Q(),C(L("keep-weighing"))}function cB(e){let t=Object.keys(e.kept.ticks).length,n=()=>{df="",Q(),C(L("run-title"))},o=()=>{n(),Cr(e.number)};return s`<p>
      <b>${t===1?"The 1 tick":`All ${t} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var Ek=({text:e})=>s`<p class="danger"><strong>${_t}</strong> ${e}</p>`;function Nk(e){let t=new Set(a.dangers.run.map(({text:o})=>o)),n=hr(e).filter(({text:o})=>!t.has(o));return n.length?s`<div class="dangers" role="alert">${n.map(Ek)}</div>`:d}var pB=({vessel:e})=>["lye","lye_pot","share"].includes(e),mB=({batter:e},t)=>!e||!t.batter||e===t.batter;function jk(e,t){if(!pB(t))return d;let n=hr(e).filter(o=>mB(o,t));return n.length?s`<div class="dangers">${n.map(o=>s`${Ek(o)} ${fB(o)}`)}</div>`:d}function fB({batter:e,topic:t}){return!e||t==="heat"?s`<button type="button" class="to-cause" @click=${gB}>To the cautions</button>`:s`<button type="button" class="to-cause" @click=${()=>hB(e)}>
    To the superfat of the ${e==="pour"?"base":"topping"}
  </button>`}function hB(e){at(e),requestAnimationFrame(()=>C(oe(e,"/superfat")))}function gB(){f({view:"watch"}),C(L("watch-title"))}var uf=(e,t)=>s`<p class="do ${Tn(e)?"old":""}">${t}</p>`;function Hk(e,{batch:t,plan:n}){let{below_brim_mm:o,mass_each_g:i}=t.pour,r=o<.05?"Pour to the brim":`Pour to ${x($e(a.units,o))} below the brim`;return uf(e,s`${r}, <b>${x(H(a.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function qk(e,{batch:t}){let n=t.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?uf(e,s`Whip until the level weigh-cup holds <b>${x(H(a.units,n.net_g))}</b>.`):d}function Uk(e,{batch:t}){let{pipe:n}=t;return n?uf(e,s`Pipe <b>${S(n.volume_each_ml,0)} ml</b> on each, ${x(H(a.units,n.mass_each_g))} at the
      planned whipped density.`):d}var _B=({vessel:e})=>e==="lye"||e==="lye_pot";function zk(e,t,n){let o=a.plan?.lye_of_day;if(!_B(n)||!(o??$B()))return d;if(o&&!o.may_be_shared)return s`<p class="day-pot">${o.text}</p>`;let i=e.planned?.mark===t.mark;return s`<div class="day-pot" role="note">
    <p>
      <b>Out of a day's pot, or mixed by itself?</b> Your studio mixes one lye solution for several batches of a day. If
      this one comes out of that pot, <b>weigh no water and no alkali here</b>: one or the other, never both.
    </p>
    ${i?bB(e,n):s`<p>How much is taken out of it stands on the sheet that it was mixed by.</p>`}
    <a href=${Tt({name:"days",file:a.run.file})}>To Days, where each pot stands</a>
  </div>`}var $B=()=>!a.plan&&$(a.beside.studio?.now,"/days/one_lye_a_day")!==void 0;function bB(e,t){let{days:n,complaint:o,is_old:i}=tr("run");if(o)return s`<p>The days of this run cannot be told yet: Days says why.</p>`;if(!n||i)return s`<p>Asking for the days of this run ...</p>`;let r=yB(n,e.number,t);return r?s`<p>
      By the days of this run as planned now, out of the pot mixed on the evening of ${xe(r.made)} for
      ${Te(r.for)}:
    </p>
    ${vB(r,e.number,t)}
    <p>If another pot was mixed, as for an order, what stands at that one holds.</p>`:s`<p>
      By the days of this run as planned now, <b>this batch is mixed by itself</b>. In an order, the order's days hold.
    </p>`}var wB=({vessel:e,batter:t})=>e==="lye_pot"?"all":t==="pipe"?"topping":"base",yB=({lyes:e},t,n)=>e.find(o=>o.lye_of===wB(n)&&o.batches.some(({batch:i})=>i===t));function vB({batches:e,pot:t},n,o){let i=e.filter(({batch:l})=>l===n).flatMap(({shares:l})=>l),r=o.rows.filter(({role:l})=>!["water","ice","alkali"].includes(l)).map(({name:l})=>l);return s`<ul>
      ${i.map(l=>{let u=t.shares[l],c=u.top_up_g>0?x(X(a.units,ae(u,"top_up_"))):"";return s`<li>
          ${u.batter}: <b>${x(X(a.units,ae(u,"lye_"),"down"))}</b> of the lye
          solution${c?s`, and <b>${c}</b> of plain water`:d}
        </li>`})}
    </ul>
    ${r.length?s`<p>Into the share, as below: ${Ee(r)}.</p>`:d}`}function Kk(e,{shown:t,beside:n}){if(e==="both")return[t,n];let o=e==="us"?"oz":"g";return[Ot(n)===o?n:t,""]}function Jk(e,t,n){if(t.vessel==="share"&&!e.batch.lye_pot&&n.role==="lye_solution")return xB(e,t,n);let o=kB(e,t,n);return o===void 0?void 0:{place:o}}function kB({batch:e,plan:t,place:n,vessels:o},i,r){switch(i.vessel){case"fats":case"lye":case"batter":return Qk(i,r,e,n);case"layers":return RB(r,e.pour.layers??[],`${n}.pour.layers`);case"dust":return cf(r.name,e.dust,`${n}.dust`);case"lye_pot":return r.role==="water"||r.role==="ice"?`${n}.lye_pot.water_g`:cf(r.name,e.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let l=o.filter(u=>u.vessel==="melt");return l.length===t.decorations.length?`decorations.${l.indexOf(i)}.make_g`:void 0}case"share":return TB(i,r,e,n)}}function xB({vessels:e},t,n){let o=e.find(r=>r.vessel==="lye"&&r.key===t.key.replace(/\.share$/,".lye"));return o?{working:{of:t.key,formula:"all of the lye solution = all that was weighed for it; what evaporated since is made up with plain water",with:o.rows.map(({name:r,shown:l})=>({name:r,value:l,from:o.title})),comes_to:n.shown,sources:[]}}:void 0}var Vk=({key:e})=>Number(/^pipe\.(\d+)\./.exec(e)?.[1]??1)-1;function TB(e,t,n,o){let i=(n.pipe?.whippings??[]).slice(0,Vk(e)),r=e.batter==="pipe"?i.reduce((l,{count:u})=>l+u,1):0;return t.role==="lye_solution"?`${o}.lye_pot.shares.${r}.lye_g`:t.role==="water"?`${o}.lye_pot.shares.${r}.top_up_g`:Qk(e,t,n,o,"lye")}function cf(e,t,n){let o=t.findIndex(i=>i.name===e);return o<0?void 0:`${n}.${o}.g`}function Qk(e,t,n,o,i=e.vessel){let r=Vk(e),[l,u]=e.batter==="pipe"?[n.pipe?.whippings[r],`${o}.pipe.whippings.${r}`]:[n.pour,`${o}.pour`],c=(l?.ingredients??[]).findIndex(({name:p,goes_into:m,role:_})=>m===i&&(p===t.name||t.role==="ice"&&_==="water"));return c<0?void 0:`${u}.ingredients.${c}.g`}function RB(e,t,n){let o=(t??[]).findIndex(({name:i})=>i===(e.adding??e.name));return o<0||!e.adding?o<0?void 0:`${n}.${o}.g`:cf(e.name,t[o].colours,`${n}.${o}.colours`)}function pf(e,t,n){let o=n.words.filter(({is_order:r})=>r),i=n.rows.every(({key:r})=>ro(e.number,r).is_done);return s`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${Gk(n)}>
    <div class="vessel-head">
      <h3 id=${Gk(n)}>
        ${n.title}${n.times?s` <b>${n.times} times</b>`:d}${n.day_before?s` <b>the day before</b>`:d}${i?s` <span class="all-in">✓ all in</span>`:d}
      </h3>
      ${o.map(({text:r})=>s`<p class="vessel-order">${r}</p>`)}
    </div>
    ${zk(e,t,n)} ${jk(t,n)}
    ${wl(n.rows,({key:r})=>r,r=>SB(e,t,n,r))}
  </section>`}var Gk=({key:e})=>`vessel-${e.replaceAll(".","-")}`;function SB(e,t,n,o){let{is_done:i,is_waiting:r}=ro(e.number,o.key),[l,u]=Kk(a.units,o),c=Tn(e),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return s`<div class="weigh ${o.role} ${i?"done":""} ${r?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${P(i)}
        ?disabled=${e.kept?.finished_at!==void 0}
        @change=${_=>AB(e,t,o,_.target)}
      />
      <span class="name"
        >${o.name}${m?s` <small>${m}</small>`:d}${r?s` <small class="not-kept">not kept yet</small>`:d}</span
      >
      ${o.running_shown?s`<span class="running">total ${o.running_shown}</span>`:d}
      <span class="amount ${c?"old":""}"><b>${l}</b>${u?s` <i>${u}</i>`:d}</span>
    </label>
    ${DB(e,t,n,o)}
  </div>`}function AB(e,{mark:t},n,o){if(!Tn(e))return Sg(e.number,t,n.key,o.checked);o.checked=!o.checked,D("Not ticked: what is struck through is not to be weighed.")}function DB(e,t,n,o){let{planned:i}=e,r=i?.mark===t.mark?i.vessels.find(({key:m})=>m===n.key):void 0,l=i&&r&&Jk(i,r,o);if(!l)return d;let u=`weigh.${e.number}.${o.key}`,c=a.open.has(u),p=`sum-${u.replaceAll(/[^\w]/g,"-")}`;return s`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:d}
      @click=${()=>je("open",u)}
    >
      ${c?"\u2013":"="}
    </button>
    ${c?s`<div class="sum" id=${p}>${"place"in l?Lc(l.place):dl(l.working)}</div>`:d}`}function mf(e,t){let n=e.flatMap(({title:o,words:i})=>i.filter(({is_order:r})=>!r).map(({text:r})=>({title:o,text:r})));return s`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${t} ${n.map(({title:o,text:i})=>s`<p><b>${o}:</b> ${i}</p>`)}
  </details>`}function Yk(e,t){let{planned:n,whip_today:o}=a;return!t||!n?void 0:(o?.of===n&&o.batch===e&&o.reading===t||PB(e,t),o?.batch===e&&o.reading===t?o:void 0)}var ff=!1;async function PB(e,t){let{planned:n}=a;if(ff||!n)return;ff=!0;let o={of:n,batch:e,reading:t},i={holds:$(n.run,"/pipe/whip/holds")??"",net:t};try{let r=await ea({...n,run:M(n.run,"/pipe/whip_now",i)});f({whip_today:{...o,...OB(r,e)}})}catch(r){if(!(r instanceof w))throw r;f({whip_today:{...o,complaint:B(r.complaint)}})}finally{ff=!1}}function OB(e,t){let n=e.batches.find(({numbers:o})=>o.includes(t));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var gf,hf,FB=e=>gf??(Ot(e)==="oz"||!e&&a.units==="us"?"oz":"g");function Zk(e,t){let n=t.batch.pipe?.whippings??[];if(!n.some(l=>l.readings.length))return d;let o=Qo(e.number),i=FB(o),r=e.kept?.finished_at!==void 0;return s`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${qn("weigh_cup")}</div>
    ${Qt("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${P(hf??o)}
        ?disabled=${r}
        @input=${l=>hf=l.target.value}
        @change=${l=>LB(e,t,l.target.value,i)}
      />
      ${ce("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],MB)}
    </div>
    ${BB(e,t,n,o)} ${WB(t,n)}
  </div>`}function MB(e){gf=e,Q()}function LB(e,{mark:t},n,o){hf=void 0;let i=Oe(n)?`${n.trim()} ${o}`:n.trim();if(gf=void 0,i===Qo(e.number))return Q();if(Tn(e))return D("Not taken: the weights are not those of what is typed."),Q();Ag(e.number,t,i),e.kept&&Ua(Cn(e.number,e.kept.begun_at),i)}function BB(e,t,n,o){if(!o)return d;let i=Yk(e.number,o);return i?i.complaint!==void 0?s`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==t.mark?s`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:s`<div class="today" role="status">
    ${n.map((r,l)=>s`<p>${CB(r,i.pieces?.[l]??null)}</p>`)}
  </div>`:s`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function CB({pieces:e,count:t},n){if(n===null)return d;let o=t>1?"Each of these bowls pipes":"This bowl pipes",i=e-n;return s`${o} <b>${z(n,"piece")}</b> now.
    ${i>0?s`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${e} to make.`}`}function WB(e,t){let n=e.plan.cut?"casts":"pieces";return s`<details class="cup-table">
    <summary>If the weigh-cup reads something else</summary>
    ${t.map(o=>s`<table class="readings">
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
            ${o.readings.map(i=>s`<tr class=${i.planned?"planned":""}>
                  <th scope="row">${x(H(a.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${S(i.overrun_percent,0)} %</td>
                  <td>${e.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var Gs="pour",Xk=()=>sf().kept!==void 0;function ex(e){xa(),mo();let t=sf(),n=a.bench.version!==void 0||a.bench.failed!==void 0;return s`<section class="weighing" data-part=${Gs} aria-labelledby="run-title">
    ${IB(t)} ${NB(t)}
    ${t.weights&&n?s`${Nk(t.weights)} ${Ik(t)} ${jB(t,t.weights,e)}`:d}
    ${t.weights&&n&&!_f(t)?nx(t,t.weights,e):d}
    ${Fk(t)}
  </section>`}function IB(e){let{weights:t}=e;return s`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${t?.plan.run??String(a.run.now.name??"")}</h1>
    ${t?s`<p class="which">${EB(e,t)}</p>`:d}
    <div class="row">
      ${h({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${Ok(e)}
    </div>
  </div>`}function EB(e,{plan:t,batch:n,vessels:o}){let i=o.flatMap(u=>u.rows),r=i.filter(({key:u})=>ro(e.number,u).is_done).length,l=e.of>1?`Batch ${e.number} of ${e.of}: `:"";return s`<b>${l}${Xt(t,n)}</b>, ${r} of ${i.length} weighed`}function NB({number:e,weights:t}){let{failed:n,unsent:o,told:i,complaints:r,version:l}=a.bench,u=o!==void 0&&io(e);return s`<div class="bench-told" role="status">
    ${i?.batch===e?s`<p class="alarm">${i.words}</p>
            <button type="button" @click=${Og}>I have looked</button>`:d}
    ${u?s`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:d}
    ${n!==void 0?s`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:d}
    ${r.map(c=>s`<p class="alarm">${c}</p>`)}
    ${t||n!==void 0?d:s`<p class="hint">
            ${a.complaint?"No weights before this is corrected.":l===void 0?"Reading ...":""}
          </p>`}
  </div>`}function jB(e,t,n){let{vessels:o}=t,i=m=>o.filter(_=>_.batter===m),r=i(),l=r.filter(m=>m.day_before),u=r.filter(m=>!m.day_before),c=i("pipe").length>0,p=m=>m.map(_=>pf(e,t,_));return s`${JB(c,r)}
    <div class="batters ${c?"two":""}">
      ${jd("ahead","To have ready",p(l))}
      ${jd("base",c?"Base":"Batter",HB(e,t,i("pour"),l,n))}
      ${c?jd("topping","Topping",[...p(i("pipe")),zB(e,t),mf(i("pipe"),UB(e,t))]):d}
      ${jd("after","At the end",p(u))}
    </div>`}var tx=({vessel:e})=>e==="lye"||e==="lye_pot";function _f(e){let n=(e.weights?.vessels??[]).filter(o=>tx(o)&&o.batter!=="pipe").flatMap(o=>o.rows);return n.length>0&&n.every(({key:o})=>ro(e.number,o).is_done)}var nx=(e,{plan:t,batch:n,mark:o},i)=>Ew({number:e.number,words:`${e.of>1?`batch ${e.number} of ${e.of}`:"this batch"}, ${Xt(t,n)}`,seen:o,since:e.kept?.begun_at,is_struck:Tn(e),is_due:_f(e),show:i}),jd=(e,t,n)=>n.some(o=>o!==d)?s`<div class="part-of ${e}">
        <h2 id="weigh-${e}">${t}</h2>
        ${n}
      </div>`:d;function HB(e,t,n,o,i){let r=({vessel:p})=>p==="layers",l=p=>p.map(m=>pf(e,t,m)),u=n.filter(p=>!r(p)),c=u.map(tx).lastIndexOf(!0);return[...l(u.slice(0,c+1)),_f(e)?nx(e,t,i):d,...l(u.slice(c+1)),Hk(e,t),...l(n.filter(r)),mf([...o,...n],qB(e,t))]}var ox=(e,t,n=d)=>s`<p class=${Tn(e)?"old":""}>
    <b>Superfat as weighed:</b> ${t.map(o=>lt(o.superfat_percent.effective)).join(", ")} ${n}
  </p>`,qB=(e,{batch:t})=>ox(e,[t.pour],wo("superfat_as_weighed")),UB=(e,{batch:t})=>ox(e,t.pipe?.whippings??[]),zB=(e,t)=>s`${qk(e,t)} ${Zk(e,t)} ${Uk(e,t)}`,KB={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function JB(e,t){let n=[...new Set(t.flatMap(({vessel:i})=>KB[i]??[]))].join(", ").toLowerCase(),o=[["pour",e?"Base":"Batter"],...e?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?d:(o.some(([i])=>i===Gs)||(Gs="pour"),s`<div class="narrow">${ce("What is shown",Gs,o,VB)}</div>`)}function VB(e){Gs=e,Q(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var ix=()=>s`${ai(Xk()?"No new weights can be given.":void 0)} ${ex(()=>{Ze("record")})}`;var QB={"set-up":rf,watch:Ak,money:Yy,days:Cy,mould:tv,print:iv};function rx(e){let t=s`${ba().map(o=>_n(o))} ${$a().map($n)}`;if(e==="weigh")return s`${t} ${ix()}`;if(e==="record")return s`${t}
    ${Yw({to_weights:()=>{Ze("weigh")},to_learned:()=>{Ze("learned")}})}`;if(e==="learned")return s`${t} ${ai()} ${Vy()}`;let{plan:n}=a;return s`${t} ${ai()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(a.run.now.name??"")}</h1>
    ${n?QB[e](n):GB(e)}`}function GB(e){return a.complaint?e==="set-up"?rf():s`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:s`<p class="hint">Reading the run ...</p>`}var YB=()=>{f({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function ax(){let e=a.new_run;if(!e)return s`<p class="choice"><button type="button" class="strong" @click=${YB}>New run</button></p>`;let{name:t,mould:n,formula:o}=e,i=Fl(e.sell),r=t.trim()&&n&&o&&i,l=()=>{pe(async()=>{await el({name:t.trim(),mould:n,formula:o,sell:i}),f({new_run:void 0})})};return s`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${P(t)}
          @input=${u=>v(e,{name:u.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${sx(e,"mould","Mould",ZB())} ${sx(e,"formula","Base",XB())}
      ${Ml("new-run-sell",e.sell,u=>v(e,{sell:u}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!r} @click=${l}>Make the run</button>
      <button type="button" @click=${()=>f({new_run:void 0})}>Cancel</button>
    </div>
    ${r?d:s`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var ZB=()=>[...(a.files?.moulds??[]).filter(e=>!e.shipped).map(e=>[e.file,e.name||e.file]),...a.catalogue.map(e=>[e.path,e.name])],XB=()=>(a.files?.formulas??[]).map(e=>[e.file,e.name||e.file]);function sx(e,t,n,o){let i=`new-run-${t}`;return s`<div class="field choose">
    <label for=${i} data-said="required">${n}</label>
    <select id=${i} @change=${l=>v(e,{[t]:l.target.value})}>
      <option value="" .selected=${P(e[t]==="")}>choose ...</option>
      ${o.map(([l,u])=>s`<option value=${l} .selected=${P(l===e[t])}>${u}</option>`)}
    </select>
  </div>`}var eC=(e,t)=>(t.changed??"").localeCompare(e.changed??"");function dx(){let e=a.files?.runs??[],t=e.filter(o=>!o.shipped).sort(eC),n=e.filter(o=>o.shipped);return s`${Bt("Runs")} ${ax()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${t.length?en(t,lx):s`<p class="aside">No runs of your own in ${a.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${en(n,lx)}
    </section>
    ${Ct("run")}`}function lx(e){let{pieces:t,mould:n,due:o,made_on:i,changed:r}=e,l=[t===void 0?"":z(t,"piece"),n??"",o?`due ${N(o)}`:"",i?`made ${N(i)}`:r?`changed ${N(r)}`:""].filter(Boolean);return bn({kind:No,one:e,facts:l,picture:tC(n),open:()=>En(e.file)})}var tC=e=>a.files?.moulds.find(t=>t.name===e)?.file??a.catalogue.find(t=>t.name===e)?.path;var _i=({material:e,lot:t})=>`${e}:${t}`,ux=(e,t)=>e.material===t.material&&e.lot.toLowerCase()===t.lot.toLowerCase(),cx=(e,{lots:t})=>t.filter(n=>ux(n,e));function $f(e){return e[0]?.left.pieces!==void 0?{pieces:e.reduce((n,{left:o})=>n+(o.pieces??0),0)}:{g:Number(e.reduce((n,{left:o})=>n+(o.g??0),0).toFixed(6))}}function px(e,{kind:t,of:n}){if(t==="counted"){let i=e?.materials.flatMap(l=>l.lots)??[],r=i.find(l=>_i(l).toLowerCase()===n.toLowerCase());return r?$f(i.filter(l=>ux(l,r))):{g:0}}return{pieces:e?.pieces.find(({batch:i})=>i===n)?.there??0}}var gr=({kind:e,of:t},n)=>`shelf-${`${e}-${t}-${n}`.replaceAll(/[^\w]+/g,"-")}`,wf=({complaint:e},t)=>e&&e.field===t&&!e.asks?B(e):void 0;function Ce(e,{name:t,label:n,kind:o,number:i,count:r,hint:l}){let u=gr(e,t),c=wf(e,t),p=c??l;return s`<div class="field ${c?"wants":""}">
    <label for=${u}>${n}</label>
    <input
      id=${u}
      type=${o??"text"}
      inputmode=${r?"numeric":i?"decimal":d}
      autocomplete="off"
      spellcheck="false"
      .value=${P(e.typed[t]??"")}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${p?`${u}-said`:d}
      @input=${m=>Jt(e,{typed:{[t]:m.target.value}})}
    />
    ${p?s`<p id="${u}-said" class=${c?"complaint":"hint"}>${p}</p>`:d}
  </div>`}var Xe=({typed:e},t)=>e[t]?.trim()||void 0;function Hd(e,t,n,o){let i=(e.typed[t]??"").trim().toLowerCase(),r=i.split(/\s+/),l=o.filter(c=>r.every(p=>c.toLowerCase().includes(p)));return o.some(c=>c.toLowerCase()===i)||!l.length?d:s`<div class="choice" role="group" aria-label=${n}>
      ${l.slice(0,bf).map(c=>s`<button type="button" @click=${()=>Jt(e,{typed:{[t]:c}})}>${c}</button>`)}
    </div>
    ${l.length>bf?s`<p class="hint">${l.length-bf} more: type a part of the name.</p>`:d}`}var bf=8;var _r=({kind:e,of:t})=>`shelf-form-${`${e}-${t}`.replaceAll(/[^\w]+/g,"-")}`;function $r(e){let{form:t,title:n,act_words:o,fields:i}=e,r=_r(t),l=()=>{gc(t),C(nC(t))};return s`<form
    class="shelf-act"
    aria-labelledby=${r}
    @submit=${u=>{u.preventDefault(),hx(e)}}
  >
    <p class="part-title" id=${r} tabindex="-1">${n}</p>
    ${i} ${oC(e)}
    <div class="row acts-of-form">
      <button type="submit" class="strong" ?disabled=${t.is_asking}>
        ${t.is_asking?"Recording ...":o}
      </button>
      <button type="button" @click=${l}>Leave it</button>
    </div>
  </form>`}var nC=({kind:e,of:t})=>L(`shelf-open-${`${e}-${t}`.replaceAll(/[^\w]+/g,"-")}`),mx=(e,t)=>`shelf-open-${`${e}-${t}`.replaceAll(/[^\w]+/g,"-")}`,fx="shelf-told";async function hx({form:e,act:t,names:n}){let o=t();if(o&&await Ja(e,o))return C(L(fx));let i=In(e)?.complaint;i&&C(L(n.includes(i.field)&&!i.asks?gr(e,i.field):`${_r(e)}-said`))}function oC(e){let{form:t,names:n}=e,{complaint:o}=t;if(!o||n.includes(o.field)&&!o.asks)return d;let i=o.choices?.find(({confirmed:l})=>l!==void 0)?.confirmed,r=l=>()=>{l(),hx(e)};return s`<div role="alert">
    <p class="alarm" id="${_r(t)}-said" tabindex="-1">${Te(B(o))}</p>
    ${i===void 0?d:s`<button type="button" class="answer" @click=${r(()=>y_(t,i))}>It is so</button>`}
    ${o.asks==="seen"?s`<button type="button" class="answer" @click=${r(()=>v_(t,px(a.stock.list,t)))}>
            Record it even so
          </button>`:d}
  </div>`}function br(e){let{told:t}=a.stock;return t?.of!==e?d:s`<div class="told" id=${fx} tabindex="-1">
    <div>${t.sentences.map(n=>s`<p>${Te(n)}</p>`)}</div>
  </div>`}var iC={metric:["g","kg"],us:["oz","lb"],both:["g","kg","oz","lb"]},rC={metric:["ml","l"],us:["fl oz"],both:["ml","l","fl oz"]};function yf(e){let t=[...iC[a.units],...rC[a.units]];return e==="pieces"?["pieces"]:e==="mass"?t:[...t,"pieces"]}var gx=(e,t,n)=>e.typed[`${t}-unit`]??(n==="pieces"?"pieces":void 0);function qd(e,t,n,o){let i=yf(o),r=_x(e.typed[t])?void 0:gx(e,t,o);return s`<div class="amount-asked">
    ${Ce(e,{name:t,label:n,number:!0})}
    <div class="choice" role="group" aria-label="Unit: ${n}">
      ${i.map(l=>s`<button
            type="button"
            aria-pressed=${l===r?"true":"false"}
            @click=${()=>Jt(e,{typed:{[`${t}-unit`]:l}})}
          >
            ${l}
          </button>`)}
    </div>
  </div>`}var _x=(e="")=>e.trim()!==""&&!Oe(e);function Ud(e,t,n){let o=(e.typed[t]??"").trim();if(!o)return void Xo(e,t,"How much is it?");if(_x(o))return o;let i=gx(e,t,n);return i?`${o} ${i}`:void Xo(e,t,"In which unit?")}var zd=()=>a.stock.list?.names,wx=(e,t)=>s`${Ce(e,{name:"on",label:t,kind:"date"})}
  ${Ce(e,{name:"best-before",label:"Best before, if it says so",kind:"date"})}`;function yx(e){let t=zd()?.currency;return $r({form:e,title:"A lot that came",act_words:"Record it as bought",names:["bought","pack","packs","price","seller","lot","on","best-before"],fields:s`${Ce(e,{name:"bought",label:"Material"})}
      ${Hd(e,"bought","Materials",zd()?.materials??[])}
      ${qd(e,"pack","One pack holds","either")}
      <div class="row">
        ${Ce(e,{name:"packs",label:"Packs",count:!0,hint:"left blank: one"})}
        ${Ce(e,{name:"price",label:`Price of one pack${t?`, ${t}`:""}`,number:!0,hint:t?"left blank: unpriced":'with its currency, as "27.50 EUR"; left blank: unpriced'})}
      </div>
      ${Ce(e,{name:"seller",label:"Seller"})} ${Hd(e,"seller","Sellers",zd()?.sellers??[])}
      ${Ce(e,{name:"lot",label:"Lot number",hint:"as on the pack; left blank: one of your own"})}
      <div class="row">${wx(e,"Bought on")}</div>`,act:()=>{let n=Ud(e,"pack","either");return n?{bought:Xe(e,"bought")??"",pack:n,price:Xe(e,"price"),...vx(e)}:void 0}})}var vx=e=>({packs:Xe(e,"packs"),seller:Xe(e,"seller"),lot:Xe(e,"lot"),on:Xe(e,"on"),"best-before":Xe(e,"best-before")});function kx(e){return $r({form:e,title:"A lot that you made of others: lye solution, a blend",act_words:"Record it as made",names:["made","pack","of","lot","on","best-before"],fields:s`${Ce(e,{name:"made",label:"What it is"})}
      ${Hd(e,"made","Made ahead",zd()?.made_ahead??[])}
      ${qd(e,"pack","It makes","either")} ${sC(e)}
      ${Ce(e,{name:"lot",label:"Lot number",hint:"left blank: one of your own"})}
      <div class="row">${wx(e,"Made on")}</div>`,act:()=>{let t=Ud(e,"pack","either"),n=t?dC(e):void 0;return n?{made:Xe(e,"made")??"",pack:t,of:n,...vx(e)}:void 0}})}var $x=()=>a.stock.list?.materials.flatMap(({lots:e})=>e)??[];function sC(e){let t=(i,r)=>Jt(e,{sources:e.sources.map((l,u)=>u===i?{...l,...r}:l)}),n=()=>Jt(e,{sources:[...e.sources,{lot:"",amount:"",unit:""}]}),o=wf(e,"of");return s`<div class="made-of" role="group" aria-label="What is in it">
    ${e.sources.map((i,r)=>aC(e,i,r,l=>t(r,l)))}
    <button type="button" @click=${n}>
      ${e.sources.length?"And of another lot":"What of which lot is in it"}
    </button>
    <p class=${o?"complaint":"hint"} id=${gr(e,"of")} tabindex="-1">
      ${o??"Each lot loses what you took of it. Named none, it is of lots that are unknown."}
    </p>
  </div>`}function aC(e,t,n,o){let i=gr(e,`of-${n}`),r=$x().find(c=>_i(c)===t.lot),l=yf(xx(r)),u=()=>Jt(e,{sources:e.sources.filter((c,p)=>p!==n)});return s`<div class="row">
    <div class="field">
      <label for="${i}-lot">Lot</label>
      <select id="${i}-lot" .value=${P(t.lot)} @change=${c=>o({lot:bx(c)})}>
        <option value="" ?selected=${!t.lot}>Choose</option>
        ${$x().map(c=>s`<option value=${_i(c)} ?selected=${_i(c)===t.lot}>
              ${lC(c)}, lot ${c.lot}: ${Pt(a.units,c.left)}
            </option>`)}
      </select>
    </div>
    <div class="field">
      <label for="${i}-amount">So much of it</label>
      <input
        id="${i}-amount"
        inputmode="decimal"
        autocomplete="off"
        .value=${P(t.amount)}
        @input=${c=>o({amount:bx(c)})}
      />
    </div>
    <div class="choice" role="group" aria-label="Unit of what is taken, ${n+1}">
      ${l.map(c=>s`<button type="button" aria-pressed=${c===t.unit?"true":"false"} @click=${()=>o({unit:c})}>
            ${c}
          </button>`)}
    </div>
    <button type="button" aria-label="Leave out lot ${n+1}" @click=${u}>Leave out</button>
  </div>`}var bx=e=>e.target.value,xx=e=>e===void 0?"either":e.left.pieces===void 0?"mass":"pieces";function lC({material:e,make:t}){let n=a.stock.list?.materials.find(o=>o.material===e);return t??n?.shown_as??e}function dC(e){let t=[];for(let{lot:n,amount:o,unit:i}of e.sources){if(!n)return void Xo(e,"of","Which lot is it?");if(!o.trim())return void Xo(e,"of","How much of it is taken?");if(Oe(o)&&!i)return void Xo(e,"of","In which unit is it?");t.push(`${n}=${Oe(o)?`${o.trim()} ${i}`:o.trim()}`)}return t}function Tx(e,t){let n=xx(t[0]);return $r({form:e,title:`How much is there of lot ${t[0].lot}?`,act_words:"Record the count",names:["counted","why","on"],fields:s`${t.length>1?s`<p class="hint">${t.length} deliveries have this lot number: count them together.</p>`:d}
    ${qd(e,"counted","There now",n)}
    ${Ce(e,{name:"why",label:"Why, if it is not what was left",hint:"spilt, thrown away"})}
    ${Ce(e,{name:"on",label:"Counted on",kind:"date"})}`,act:()=>{let o=Ud(e,"counted",n);return o?{counted:[`${e.of}=${o}`],why:Xe(e,"why"),on:Xe(e,"on")}:void 0}})}function Rx(){let{materials:e=[]}=a.stock.list??{};return s`<section class="shelf-part" aria-labelledby="materials-title">
    <h2 id="materials-title">Materials</h2>
    <div class="row">${Ys("bought","","Bought",!0)} ${Ys("made","","Made of others")}</div>
    ${Zs("bought","",yx)} ${Zs("made","",kx)} ${uC()}
    ${e.length?s`<p class="aside">What is best before an earlier day stands first, and is taken first.</p>
            ${e.map(cC)}`:s`<p class="aside">No lot has anything left.</p>`}
  </section>`}function Ys(e,t,n,o=!1,i,r=""){let l=()=>{hc({kind:e,of:t,seen:i}),C(L(_r({kind:e,of:t}))),requestAnimationFrame(()=>document.getElementById(_r({kind:e,of:t}))?.scrollIntoView({block:"nearest"}))};return s`<button
    type="button"
    id=${mx(e,t)}
    class=${o?"strong":""}
    aria-expanded=${In({kind:e,of:t})?"true":"false"}
    aria-label=${r?`${n}: ${r}`:d}
    @click=${l}
  >
    ${n}
  </button>`}function Zs(e,t,n){let o=In({kind:e,of:t});return o?n(o):d}function uC(){let e=a.stock.list?.not_counted??[];if(!e.length)return d;let t=()=>{hc({kind:"take-have",of:""});let o=In({kind:"take-have",of:""});o&&Ja(o,{"take-have":!0,on:o.typed.on})},n=In({kind:"take-have",of:""})?.complaint?.line;return s`<div class="part">
    <p>The studio's file lists what is no lot yet: ${e.join(", ")}. Lots alone are counted.</p>
    <button type="button" @click=${t}>Take it over as lots, once</button>
    ${n?s`<p class="alarm" role="alert">${n}</p>`:d}
  </div>`}var cC=e=>s`<section class="material" aria-label=${e.shown_as}>
    <h3>${e.shown_as}</h3>
    <ul class="lots">
      ${e.lots.map(t=>pC(t,e))}
    </ul>
  </section>`;function pC(e,t){let n=_i(e),o=cx(e,t),i=o[0]===e;return s`<li class="lot ${e.is_past?"past":""}" data-lot=${n}>
    <div class="lot-told">
      <p class="lot-left">
        <b class="code">${e.lot}</b>${e.make?s` <span>${e.make}</span>`:d} ${mC(e)}
      </p>
      <p class="lot-facts">${vf(e).map(r=>s`<span>${r}</span> `)}</p>
      ${e.is_past?kf(e):d}
    </div>
    <div class="lot-acts">
      ${i?Ys("counted",n,"Counted",!1,$f(o),`lot ${e.lot}`):d}
      <button type="button" aria-label="Where it went: lot ${e.lot}" @click=${()=>Le(`lot ${e.lot}`)}>
        Where it went
      </button>
    </div>
    ${i?br(n):d}
    ${i?Zs("counted",n,r=>Tx(r,o)):d}
  </li>`}function mC({left:e,packs:t,pack:n}){let o=(e.g??e.pieces??0)<0,i=e.pieces===void 0?{g:-(e.g??0)}:{pieces:-e.pieces};return o?s`<span class="below"
        >${Pt(a.units,i)} more was taken than was recorded: count what is there</span
      >`:s`<b>${Pt(a.units,e)}</b>
        <span class="aside">left of ${t===1?"":`${t} \xD7 `}${n}</span>`}function vf({best_before:e,is_past:t,origin:n,on:o,seller:i,paid:r,currency:l}){let u={bought:"bought",made:"made","before records":"there before records began,"}[n];return[e&&!t?`best before ${N(e)}`:"",`${u} ${N(o)}${i?` from ${i}`:""}`,r!==null?`${r} ${l} in all`:n==="bought"?"unpriced":""].filter(Boolean)}var kf=({best_before:e,lot:t})=>s`<p class="past-words">
    Best before ${N(e)}, which is past. Is ${t} still good? No batch takes it unless you choose it.
  </p>`;function Ax(){let{pieces:e=[]}=a.stock.list??{};return s`<section class="shelf-part" aria-labelledby="pieces-title">
    <h2 id="pieces-title">Pieces</h2>
    ${e.length?s`<ul class="lots">
            ${e.map(fC)}
          </ul>`:s`<p class="aside">
            No pieces are there. Those of a batch stand here once its record says how many were made.
          </p>`}
  </section>`}var Sx=[["sold","Sold"],["given","Given away"],["spoilt","Spoilt"],["counted-pieces","Counted"]];function fC(e){let{batch:t,run:n,made:o,there:i}=e;return s`<li class="lot pieces-of" data-batch=${t}>
    <div class="lot-told">
      <p class="lot-left">
        <b class="code">${t}</b> <span>${n}</span> ${o===null?d:s`<b>${i} there</b>`}
      </p>
      <p class="lot-facts">
        <span>${o===null?"How many were made is not noted yet":xf(e)}</span> ${hC(e)}
      </p>
    </div>
    <div class="lot-acts">
      ${o===null?d:Sx.map(([r,l])=>Ys(r,t,l,!1,{pieces:i},`pieces of ${t}`))}
      <button type="button" aria-label="Its record: ${t}" @click=${()=>li(e.file,e.id)}>
        Its record
      </button>
      <button type="button" aria-label="What is in it: ${t}" @click=${()=>Le(`batch ${t}`)}>
        What is in it
      </button>
    </div>
    ${br(t)} ${Sx.map(([r])=>Zs(r,t,l=>_C(l,e)))}
  </li>`}function xf({made:e,rejected:t,sold:n,given:o,spoilt:i,counted:r=0}){let l=[[t,"rejected"],[n,"sold"],[o,"given away"],[i,"spoilt"],[Math.max(r,0),"more by count"],[Math.max(-r,0),"fewer by count"]];return[`${e??0} made`,...l.filter(([u])=>u).map(([u,c])=>`${u} ${c}`)].join(", ")}function hC({cures_until:e,for_sale:t,why_not:n,made:o}){let i=e?`cures until ${N(e)} by its formulas`:"";return t?s`<span>${i?`\u25D4 noted as ready, and ${i}`:"\u2713 for sale"}</span>`:o===null||!n?i?s`<span>◔ ${i}</span>`:d:s`${i?s`<span>◔ ${i}</span> `:d}<span
      >✗ not for sale: ${Te(n)}</span
    >`}var gC={sold:["Sold","Record them as sold","Sold on"],given:["Given away","Record them as given away","Given on"],spoilt:["Spoilt","Record them as spoilt","Found on"],"counted-pieces":["Counted","Record the count","Counted on"]};function _C(e,{batch:t,there:n=0}){let{kind:o}=e,[i,r,l]=gC[o],u=o==="sold"||o==="given";return $r({form:e,title:`${i}, of ${t}: ${n} there`,act_words:r,names:[o,"for","order","why","on"],fields:s`${Ce(e,{name:o,label:o==="counted-pieces"?"Pieces there":"Pieces",count:!0})}
    ${u?$C(e):Ce(e,{name:"why",label:"Why"})}
    ${Ce(e,{name:"on",label:l,kind:"date"})}`,act:()=>({[o]:[`${t}=${Xe(e,o)??""}`],on:Xe(e,"on"),why:Xe(e,"why"),order:e.typed.order||void 0,for:e.typed.order?void 0:Xe(e,"for")})})}function $C(e){let t=a.files?.orders.filter(({shipped:i})=>!i)??[],{order:n}=e.typed,o=i=>Jt(e,{typed:{order:i===n?"":i}});return s`${t.length?s`<p class="question" id="for-order-${e.kind}">For an order</p>
          <div class="choice words" role="group" aria-labelledby="for-order-${e.kind}">
            ${t.map(({file:i,name:r,pieces:l,due:u})=>s`<button
                  type="button"
                  aria-pressed=${i===n?"true":"false"}
                  @click=${()=>o(i)}
                >
                  ${r||i}
                  <small
                    >${[l===void 0?"":z(l,"piece"),u?`due ${N(u)}`:""].filter(Boolean).join(", ")}</small
                  >
                </button>`)}
          </div>`:d}
  ${n?d:Ce(e,{name:"for",label:t.length?"Or for whom":"For whom",hint:"may be left blank"})}`}function Dx(){let{list:e,failed:t}=a.stock;return s`<h1 tabindex="-1">Shelf</h1>
    <div class="shelf-view">
      ${t!==void 0?s`<p class="alarm" role="alert"><strong>What stands there could not be read:</strong> ${t}.</p>`:d}
      ${e?s`${bC()} ${wC()} ${yC()} ${Rx()} ${Ax()}`:s`<p class="hint">${t===void 0?"Reading ...":""}</p>`}
    </div>`}function bC(){let{list:e,told:t}=a.stock;return!t||!e?d:e.pieces.some(({batch:o})=>o===t.of)||e.materials.some(({lots:o})=>o.some(i=>`${i.material}:${i.lot}`===t.of))?d:br(t.of)}function wC(){let e=a.finding?.key==="trail"?a.finding.text:"";return s`<form class="row find-trail" @submit=${n=>{n.preventDefault(),e.trim()&&(f({finding:void 0}),Le(e.trim()))}}>
    <div class="field">
      <label for="find-trail">Which pieces hold a lot, and what is in a batch: its number</label>
      <input
        id="find-trail"
        autocomplete="off"
        spellcheck="false"
        .value=${P(e)}
        @input=${n=>f({finding:{key:"trail",text:n.target.value}})}
      />
    </div>
    <button type="submit" ?disabled=${!e.trim()}>Follow it</button>
  </form>`}function yC(){let{has_records:e,notes:t=[]}=a.stock.list??{},n=t.filter(({severity:o})=>o==="danger");return s`${e?d:s`<p class="aside">Nothing is recorded in this folder yet.</p>`}
  ${n.map(({text:o})=>s`<p class="alarm">${Te(o)}</p>`)}`}function Ox(){let{trail:e}=a.stock,{trail:t,complaint:n,choices:o=[],of:i=""}=e??{};return s`<h1 tabindex="-1">${t?kC(t):i}</h1>
    <div class="trail">
      <div class="row">
        ${vC(e)}
        ${t?s`<button type="button" @click=${()=>window.print()}>Print</button>`:d}
      </div>
      ${n?s`<p class="alarm" role="alert">${n}</p>`:d}
      ${o.length?s`<div class="row">
              ${o.map(r=>s`<button type="button" @click=${()=>Le(r)}>The ${r}</button>`)}
            </div>`:d}
      ${t?xC(t):n?d:s`<p class="hint">Reading ...</p>`}
    </div>`}function vC(e){return e?.order!==void 0&&e.order===a.order?.open.file?s`<button type="button" @click=${()=>f({view:"order"})}>Back to the order</button>`:s`<button type="button" @click=${()=>f({view:"shelf"})}>Back to the shelf</button>`}function kC({asked:e,is:t,batches:n}){return t==="lot"?`Where lot ${e} went`:t==="batch"?`What is in ${e}`:`What ${n.flatMap(({went:i})=>i).find(i=>i.for)?.for??e} got`}function xC(e){let{is:t,lots:n,batches:o,gaps:i}=e,r=s`<section class="shelf-part" aria-labelledby="trail-lots">
    <h2 id="trail-lots">${t==="lot"?"The lot":"Lots in it"}</h2>
    ${n.length?s`<ul class="lots">
            ${n.map(TC)}
          </ul>`:s`<p class="aside">No lot of it is known.</p>`}
  </section>`,l=s`<section class="shelf-part" aria-labelledby="trail-batches">
    <h2 id="trail-batches">${t==="lot"?"Batches that hold it":t==="batch"?"The batch":"Batches"}</h2>
    ${o.length?s`<ul class="lots">
            ${o.map(u=>SC(u,e))}
          </ul>`:s`<p class="aside">No batch has taken of it.</p>`}
  </section>`;return s`${t==="lot"?s`${r} ${l}`:s`${l} ${r}`} ${MC(i)}`}var Fo=(e,t,n=t)=>s`<button type="button" class="to-trail" @click=${()=>Le(`${e} ${t}`)}>${n}</button>`;function TC(e){let{shown_as:t}=e;return s`<li class="lot" data-lot=${e.lot}>
    <div class="lot-told">
      <p class="lot-left">
        ${Fo("lot",e.lot)} <span>${e.make??t}</span> <b>${Pt(a.units,e.left)}</b>
        <span class="aside">left of ${e.packs===1?"":`${e.packs} \xD7 `}${e.pack}</span>
      </p>
      <p class="lot-facts">${vf(e).map(n=>s`<span>${n}</span> `)}</p>
      ${e.is_past?kf(e):d} ${Px("Made of",e.from_lots)} ${Px("Went into",e.into_lots)}
      ${e.counts.map(({on:n,by:o,why:i})=>s`<p class="lot-facts">Counted ${N(n)}: ${RC(o)}${i?` (${i})`:""}</p>`)}
    </div>
  </li>`}function RC({g:e,pieces:t}){let n=e??t??0;return n?`${Pt(a.units,t===void 0?{g:Math.abs(n)}:{pieces:Math.abs(n)})} ${n<0?"less":"more"} than was recorded`:"as it was"}var Px=(e,t)=>t.length?s`<p class="trail-line">
        ${e}
        ${t.map(n=>s`${Fo("lot",n.lot)} <span>${n.material}, ${Pt(a.units,n.amount)}</span> `)}
      </p>`:d;function SC(e,{is:t,asked:n}){let{batch:o,run:i,begun_on:r,rows:l,pieces:u,went:c,cost:p,lines:m}=e;return s`<li class="lot pieces-of" data-batch=${o}>
    <div class="lot-told">
      <p class="lot-left">
        ${t==="batch"&&o===n?s`<b class="code">${o}</b>`:Fo("batch",o)} <span>${i}</span>
        ${m.length||u.made===null?d:s`<b>${u.there} there</b>`}
      </p>
      <p class="lot-facts">
        <span>begun ${N(r)}</span>
        ${m.length?d:s`<span>${u.made===null?"how many were made is not noted":xf(u)}</span>`}
        ${p?s`<span>${PC(p)}</span>`:d}
      </p>
      ${AC(e)}
      ${c.length?s`<ul class="trail-went">
              ${c.map(OC)}
            </ul>`:d}
      <ul class="trail-rows">
        ${l.map(FC)}
      </ul>
    </div>
    <div class="lot-acts">
      <button type="button" aria-label="Its record: ${o}" @click=${()=>{li(e.file,e.id)}}>
        Its record
      </button>
    </div>
  </li>`}function AC({poured_from:e,lines:t}){return e?s`<p class="trail-line">
      Poured from ${Fo("batch",e.batch)} <span>(${DC(e.share_percent)})</span>
    </p>`:t.length?s`<p class="trail-line">Poured into ${t.map(n=>s`${Fo("batch",n)} `)}</p>`:d}var DC=e=>`${Math.round(e*10)/10} %`;function PC({materials:e,unpriced:t}){let n=e.map(({amount:i,currency:r})=>`${i} ${r}`).join(" and "),o=t.length?`unpriced: ${t.join(", ")}`:"";return[n?`its materials cost ${n}`:"",o].filter(Boolean).join("; ")}function OC({what:e,pieces:t,on:n,order:o,for:i,why:r}){let l={sold:"sold",given:"given away",spoilt:"spoilt",counted:""}[e],u=Math.abs(t),c=e==="counted"?`${u} ${t<0?"fewer":"more"} by count`:`${u} ${l}`,p=o??i;return s`<li>
    ${c} ${p?s`to ${Fo("order",p,i??p)}`:d} on ${N(n)}${r?` (${r})`:""}
  </li>`}function FC({shown_as:e,weighed:t,from:n,unknown:o}){let i=(o.g??o.pieces??0)>0;return s`<li>
    <span>${e}, ${Pt(a.units,t)}</span>
    ${n.map(r=>s`<span class="trail-from"
          >${Fo("lot",r.lot)} ${n.length>1||i?Pt(a.units,r.amount):d}
          ${r.make??d}</span
        > `)}
    ${i?s`<span class="trail-unknown"
            >${n.length?`${Pt(a.units,o)} of`:"of"} a lot that nobody noted</span
          >`:d}
  </li>`}function MC(e){return e.length?s`<section class="shelf-part" aria-labelledby="trail-gaps">
    <h2 id="trail-gaps">Batches that may hold it too</h2>
    <p>They weighed the same material, and nobody noted of which lot.</p>
    <ul class="trail-went">
      ${e.map(({batch:t,run:n,shown_as:o})=>s`<li>${Fo("batch",t)} ${n}: ${o}</li>`)}
    </ul>
  </section>`:d}function Fx(){let e=uo();return s`${Bt("Tips")}
    <section aria-labelledby="own-tips">
      <h2 id="own-tips">Your own tips</h2>
      ${yl(Zn,"Each file is named by the studio, or by the runs that use its tips.",t=>Er(Zn,t))}
      ${e?q$(e):d}
      ${vl({label:"A new tip of your own",add:e?`Add it to ${e.file}`:"Begin a file with it",act:t=>e?Promise.resolve(K$(t)):Oa(Zn,Zc(t)),tried:pe})}
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
          ${Gr().map(({name:t,opening:n,area_mm2:o})=>s`<tr>
                <th scope="row">${t}</th>
                <td>${n??""}</td>
                <td>${o===void 0?"":S(o,1)}</td>
              </tr>`)}
        </tbody>
      </table>
    </section>
    ${Ct("tips")}`}var Bx=document.getElementById("page");function Cx(){let{view:e,fault:t}=a;return s` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${Ly()} ${i$()}
    <main
      id="main"
      tabindex="-1"
      data-view=${e}
      class=${a.is_old&&!ct(e)&&e!=="order"&&e!=="trail"?"old-now":""}
    >
      ${t?s`${e==="reading"?s`<h1>Brimwright</h1>`:d}
              <p class="alarm" role="alert">${t}</p>`:d}
      ${BC()}
    </main>
    <p class="unseen" role="status">${a.announcement}</p>`}var LC={runs:dx,orders:Sy,formulas:$w,moulds:bw,fats:nb,tips:Fx,shelf:Dx};function BC(){let{view:e,fault:t}=a;return Sn(e)?rx(e):ct(e)?LC[e]():e==="formula"?hw():e==="order"?Ry():e==="trail"?Ox():t?d:s`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}yh(()=>{iw(),Rt(Cx(),Bx),IC()});Rt(Cx(),Bx);document.addEventListener("keydown",e=>{if(!(e.ctrlKey||e.metaKey)||e.key.toLowerCase()!=="z"||ct(a.view)&&!a.mould)return;e.preventDefault();let{undo:t,redo:n}=kd();(e.shiftKey?n:t)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return Ya();ht()});function CC(){if(!a.run.file)return Tf();f({fault:void 0}),ht(),se()}function Tf(){f({fault:void 0}),pw().catch(e=>{f({fault:WC(e)}),e instanceof w&&e.may_pass&&window.setTimeout(Tf,2e3)})}function WC(e){return e instanceof w&&[401,403].includes(e.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":e instanceof Error?e.message:String(e)}var Mx=new ResizeObserver(([{target:e}])=>Wx(e.offsetHeight)),Lx=null;function IC(){let e=document.querySelector(".foremost");e!==Lx&&(Mx.disconnect(),e?Mx.observe(e):Wx(0),Lx=e)}var Wx=e=>document.documentElement.style.setProperty("--foremost",`${e}px`);kh();t$();cw();Sf(e=>{Zi(),e&&CC()});Tf();
