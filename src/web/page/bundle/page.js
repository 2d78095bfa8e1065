var Cr=globalThis,Fr=Cr.ShadowRoot&&(Cr.ShadyCSS===void 0||Cr.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,td=Symbol(),ed=new WeakMap,Br=class{constructor(t,n,o){if(this._$cssResult$=!0,o!==td)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=t,this.t=n}get styleSheet(){let t=this.o,n=this.t;if(Fr&&t===void 0){let o=n!==void 0&&n.length===1;o&&(t=ed.get(n)),t===void 0&&((this.o=t=new CSSStyleSheet).replaceSync(this.cssText),o&&ed.set(n,t))}return t}toString(){return this.cssText}},nd=e=>new Br(typeof e=="string"?e:e+"",void 0,td);var od=(e,t)=>{if(Fr)e.adoptedStyleSheets=t.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of t){let o=document.createElement("style"),i=Cr.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,e.appendChild(o)}},Il=Fr?e=>e:e=>e instanceof CSSStyleSheet?(t=>{let n="";for(let o of t.cssRules)n+=o.cssText;return nd(n)})(e):e;var{is:J$,defineProperty:q$,getOwnPropertyDescriptor:V$,getOwnPropertyNames:K$,getOwnPropertySymbols:G$,getPrototypeOf:Y$}=Object,Ir=globalThis,id=Ir.trustedTypes,Z$=id?id.emptyScript:"",Q$=Ir.reactiveElementPolyfillSupport,Ns=(e,t)=>e,Nl={toAttribute(e,t){switch(t){case Boolean:e=e?Z$:null;break;case Object:case Array:e=e==null?e:JSON.stringify(e)}return e},fromAttribute(e,t){let n=e;switch(t){case Boolean:n=e!==null;break;case Number:n=e===null?null:Number(e);break;case Object:case Array:try{n=JSON.parse(e)}catch{n=null}}return n}},rd=(e,t)=>!J$(e,t),sd={attribute:!0,type:String,converter:Nl,reflect:!1,useDefault:!1,hasChanged:rd};Symbol.metadata??=Symbol("metadata"),Ir.litPropertyMetadata??=new WeakMap;var no=class extends HTMLElement{static addInitializer(t){this._$Ei(),(this.l??=[]).push(t)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(t,n=sd){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(t)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(t,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(t,o,n);i!==void 0&&q$(this.prototype,t,i)}}static getPropertyDescriptor(t,n,o){let{get:i,set:s}=V$(this.prototype,t)??{get(){return this[n]},set(r){this[n]=r}};return{get:i,set(r){let c=i?.call(this);s?.call(this,r),this.requestUpdate(t,c,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(t){return this.elementProperties.get(t)??sd}static _$Ei(){if(this.hasOwnProperty(Ns("elementProperties")))return;let t=Y$(this);t.finalize(),t.l!==void 0&&(this.l=[...t.l]),this.elementProperties=new Map(t.elementProperties)}static finalize(){if(this.hasOwnProperty(Ns("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(Ns("properties"))){let n=this.properties,o=[...K$(n),...G$(n)];for(let i of o)this.createProperty(i,n[i])}let t=this[Symbol.metadata];if(t!==null){let n=litPropertyMetadata.get(t);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(t){let n=[];if(Array.isArray(t)){let o=new Set(t.flat(1/0).reverse());for(let i of o)n.unshift(Il(i))}else t!==void 0&&n.push(Il(t));return n}static _$Eu(t,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof t=="string"?t.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(t=>this.enableUpdating=t),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(t=>t(this))}addController(t){(this._$EO??=new Set).add(t),this.renderRoot!==void 0&&this.isConnected&&t.hostConnected?.()}removeController(t){this._$EO?.delete(t)}_$E_(){let t=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(t.set(o,this[o]),delete this[o]);t.size>0&&(this._$Ep=t)}createRenderRoot(){let t=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return od(t,this.constructor.elementStyles),t}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(t=>t.hostConnected?.())}enableUpdating(t){}disconnectedCallback(){this._$EO?.forEach(t=>t.hostDisconnected?.())}attributeChangedCallback(t,n,o){this._$AK(t,o)}_$ET(t,n){let o=this.constructor.elementProperties.get(t),i=this.constructor._$Eu(t,o);if(i!==void 0&&o.reflect===!0){let s=(o.converter?.toAttribute!==void 0?o.converter:Nl).toAttribute(n,o.type);this._$Em=t,s==null?this.removeAttribute(i):this.setAttribute(i,s),this._$Em=null}}_$AK(t,n){let o=this.constructor,i=o._$Eh.get(t);if(i!==void 0&&this._$Em!==i){let s=o.getPropertyOptions(i),r=typeof s.converter=="function"?{fromAttribute:s.converter}:s.converter?.fromAttribute!==void 0?s.converter:Nl;this._$Em=i;let c=r.fromAttribute(n,s.type);this[i]=c??this._$Ej?.get(i)??c,this._$Em=null}}requestUpdate(t,n,o,i=!1,s){if(t!==void 0){let r=this.constructor;if(i===!1&&(s=this[t]),o??=r.getPropertyOptions(t),!((o.hasChanged??rd)(s,n)||o.useDefault&&o.reflect&&s===this._$Ej?.get(t)&&!this.hasAttribute(r._$Eu(t,o))))return;this.C(t,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(t,n,{useDefault:o,reflect:i,wrapped:s},r){o&&!(this._$Ej??=new Map).has(t)&&(this._$Ej.set(t,r??n??this[t]),s!==!0||r!==void 0)||(this._$AL.has(t)||(this.hasUpdated||o||(n=void 0),this._$AL.set(t,n)),i===!0&&this._$Em!==t&&(this._$Eq??=new Set).add(t))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let t=this.scheduleUpdate();return t!=null&&await t,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,s]of this._$Ep)this[i]=s;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,s]of o){let{wrapped:r}=s,c=this[i];r!==!0||this._$AL.has(i)||c===void 0||this.C(i,void 0,s,c)}}let t=!1,n=this._$AL;try{t=this.shouldUpdate(n),t?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw t=!1,this._$EM(),o}t&&this._$AE(n)}willUpdate(t){}_$AE(t){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(t)),this.updated(t)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(t){return!0}update(t){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(t){}firstUpdated(t){}};no.elementStyles=[],no.shadowRootOptions={mode:"open"},no[Ns("elementProperties")]=new Map,no[Ns("finalized")]=new Map,Q$?.({ReactiveElement:no}),(Ir.reactiveElementVersions??=[]).push("2.1.2");var Hl=globalThis,ad=e=>e,Nr=Hl.trustedTypes,ld=Nr?Nr.createPolicy("lit-html",{createHTML:e=>e}):void 0,jl="$lit$",oo=`lit$${Math.random().toFixed(9).slice(2)}$`,Ul="?"+oo,X$=`<${Ul}>`,ti=document,Hs=()=>ti.createComment(""),js=e=>e===null||typeof e!="object"&&typeof e!="function",Jl=Array.isArray,fd=e=>Jl(e)||typeof e?.[Symbol.iterator]=="function",zl=`[ 	
\f\r]`,zs=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,ud=/-->/g,cd=/>/g,Xo=RegExp(`>|${zl}(?:([^\\s"'>=/]+)(${zl}*=${zl}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),pd=/'/g,dd=/"/g,hd=/^(?:script|style|textarea|title)$/i,ql=e=>(t,...n)=>({_$litType$:e,strings:t,values:n}),u=ql(1),Xe=ql(2),M1=ql(3),mn=Symbol.for("lit-noChange"),f=Symbol.for("lit-nothing"),md=new WeakMap,ei=ti.createTreeWalker(ti,129);function gd(e,t){if(!Jl(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return ld!==void 0?ld.createHTML(t):t}var _d=(e,t)=>{let n=e.length-1,o=[],i,s=t===2?"<svg>":t===3?"<math>":"",r=zs;for(let c=0;c<n;c++){let d=e[c],h,b,$=-1,y=0;for(;y<d.length&&(r.lastIndex=y,b=r.exec(d),b!==null);)y=r.lastIndex,r===zs?b[1]==="!--"?r=ud:b[1]!==void 0?r=cd:b[2]!==void 0?(hd.test(b[2])&&(i=RegExp("</"+b[2],"g")),r=Xo):b[3]!==void 0&&(r=Xo):r===Xo?b[0]===">"?(r=i??zs,$=-1):b[1]===void 0?$=-2:($=r.lastIndex-b[2].length,h=b[1],r=b[3]===void 0?Xo:b[3]==='"'?dd:pd):r===dd||r===pd?r=Xo:r===ud||r===cd?r=zs:(r=Xo,i=void 0);let S=r===Xo&&e[c+1].startsWith("/>")?" ":"";s+=r===zs?d+X$:$>=0?(o.push(h),d.slice(0,$)+jl+d.slice($)+oo+S):d+oo+($===-2?c:S)}return[gd(e,s+(e[n]||"<?>")+(t===2?"</svg>":t===3?"</math>":"")),o]},Us=class e{constructor({strings:t,_$litType$:n},o){let i;this.parts=[];let s=0,r=0,c=t.length-1,d=this.parts,[h,b]=_d(t,n);if(this.el=e.createElement(h,o),ei.currentNode=this.el.content,n===2||n===3){let $=this.el.content.firstChild;$.replaceWith(...$.childNodes)}for(;(i=ei.nextNode())!==null&&d.length<c;){if(i.nodeType===1){if(i.hasAttributes())for(let $ of i.getAttributeNames())if($.endsWith(jl)){let y=b[r++],S=i.getAttribute($).split(oo),P=/([.?@])?(.*)/.exec(y);d.push({type:1,index:s,name:P[2],strings:S,ctor:P[1]==="."?Hr:P[1]==="?"?jr:P[1]==="@"?Ur:oi}),i.removeAttribute($)}else $.startsWith(oo)&&(d.push({type:6,index:s}),i.removeAttribute($));if(hd.test(i.tagName)){let $=i.textContent.split(oo),y=$.length-1;if(y>0){i.textContent=Nr?Nr.emptyScript:"";for(let S=0;S<y;S++)i.append($[S],Hs()),ei.nextNode(),d.push({type:2,index:++s});i.append($[y],Hs())}}}else if(i.nodeType===8)if(i.data===Ul)d.push({type:2,index:s});else{let $=-1;for(;($=i.data.indexOf(oo,$+1))!==-1;)d.push({type:7,index:s}),$+=oo.length-1}s++}}static createElement(t,n){let o=ti.createElement("template");return o.innerHTML=t,o}};function ni(e,t,n=e,o){if(t===mn)return t;let i=o!==void 0?n._$Co?.[o]:n._$Cl,s=js(t)?void 0:t._$litDirective$;return i?.constructor!==s&&(i?._$AO?.(!1),s===void 0?i=void 0:(i=new s(e),i._$AT(e,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(t=ni(e,i._$AS(e,t.values),i,o)),t}var zr=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:o}=this._$AD,i=(t?.creationScope??ti).importNode(n,!0);ei.currentNode=i;let s=ei.nextNode(),r=0,c=0,d=o[0];for(;d!==void 0;){if(r===d.index){let h;d.type===2?h=new Gi(s,s.nextSibling,this,t):d.type===1?h=new d.ctor(s,d.name,d.strings,this,t):d.type===6&&(h=new Jr(s,this,t)),this._$AV.push(h),d=o[++c]}r!==d?.index&&(s=ei.nextNode(),r++)}return ei.currentNode=ti,i}p(t){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(t,o,n),n+=o.strings.length-2):o._$AI(t[n])),n++}},Gi=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,o,i){this.type=2,this._$AH=f,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=ni(this,t,n),js(t)?t===f||t==null||t===""?(this._$AH!==f&&this._$AR(),this._$AH=f):t!==this._$AH&&t!==mn&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==void 0?this.T(t):fd(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this._$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==f&&js(this._$AH)?this._$AA.nextSibling.data=t:this.T(ti.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:o}=t,i=typeof o=="number"?this._$AC(t):(o.el===void 0&&(o.el=Us.createElement(gd(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let s=new zr(i,this),r=s.u(this.options);s.p(n),this.T(r),this._$AH=s}}_$AC(t){let n=md.get(t.strings);return n===void 0&&md.set(t.strings,n=new Us(t)),n}k(t){Jl(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let s of t)i===n.length?n.push(o=new e(this.O(Hs()),this.O(Hs()),this,this.options)):o=n[i],o._$AI(s),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){let o=ad(t).nextSibling;ad(t).remove(),t=o}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},oi=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,o,i,s){this.type=1,this._$AH=f,this._$AN=void 0,this.element=t,this.name=n,this._$AM=i,this.options=s,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=f}_$AI(t,n=this,o,i){let s=this.strings,r=!1;if(s===void 0)t=ni(this,t,n,0),r=!js(t)||t!==this._$AH&&t!==mn,r&&(this._$AH=t);else{let c=t,d,h;for(t=s[0],d=0;d<s.length-1;d++)h=ni(this,c[o+d],n,d),h===mn&&(h=this._$AH[d]),r||=!js(h)||h!==this._$AH[d],h===f?t=f:t!==f&&(t+=(h??"")+s[d+1]),this._$AH[d]=h}r&&!i&&this.j(t)}j(t){t===f?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,t??"")}},Hr=class extends oi{constructor(){super(...arguments),this.type=3}j(t){this.element[this.name]=t===f?void 0:t}},jr=class extends oi{constructor(){super(...arguments),this.type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==f)}},Ur=class extends oi{constructor(t,n,o,i,s){super(t,n,o,i,s),this.type=5}_$AI(t,n=this){if((t=ni(this,t,n,0)??f)===mn)return;let o=this._$AH,i=t===f&&o!==f||t.capture!==o.capture||t.once!==o.once||t.passive!==o.passive,s=t!==f&&(o===f||i);i&&this.element.removeEventListener(this.name,this,o),s&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},Jr=class{constructor(t,n,o){this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(t){ni(this,t)}},$d={M:jl,P:oo,A:Ul,C:1,L:_d,R:zr,D:fd,V:ni,I:Gi,H:oi,N:jr,U:Ur,B:Hr,F:Jr},eb=Hl.litHtmlPolyfillSupport;eb?.(Us,Gi),(Hl.litHtmlVersions??=[]).push("3.3.3");var ii=(e,t,n)=>{let o=n?.renderBefore??t,i=o._$litPart$;if(i===void 0){let s=n?.renderBefore??null;o._$litPart$=i=new Gi(t.insertBefore(Hs(),s),s,void 0,n??{})}return i._$AI(e),i};var Vl=globalThis,Yi=class extends no{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let t=super.createRenderRoot();return this.renderOptions.renderBefore??=t.firstChild,t}update(t){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(t),this._$Do=ii(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return mn}};Yi._$litElement$=!0,Yi.finalized=!0,Vl.litElementHydrateSupport?.({LitElement:Yi});var tb=Vl.litElementPolyfillSupport;tb?.({LitElement:Yi});(Vl.litElementVersions??=[]).push("4.2.2");var fn=({problem:e,remedy:t})=>[e,t].filter(Boolean).join("; "),Q=class extends Error{constructor(n,o,i={}){super(o.line);this.status=n;this.complaint=o;this.answer=i}status;complaint;answer;get may_pass(){return this.status===0||this.status===503}},wd=()=>/^#([0-9a-f]{48})$/.exec(location.hash)?.[1],Vr="";function yd(e){Vr=e,sessionStorage.setItem("key",e)}yd(wd()??sessionStorage.getItem("key")??"");function vd(e){addEventListener("hashchange",()=>{let t=wd();!t||t===Vr||(yd(t),e())})}var Kl={file:"",field:"",problem:"the program does not answer",remedy:"start brimwright again and open the address it prints; what you typed is kept here",line:"The program does not answer: start brimwright again and open the address it prints. What you typed is kept here."};async function Kr(e,t){let n;try{n=await fetch(e,{...t,headers:{"X-Bench-Key":Vr}})}catch{throw new Q(0,Kl)}if(n.ok)return n;throw await ob(n)}var bd="what you typed is kept here";function nb(e){let[t,n]=e===503?["the program has too much to do at once",`it is asked again in a moment; ${bd}`]:["a fault of brimwright itself",`${bd}: change something, or ask again`];return{file:"",field:"",problem:t,remedy:n,line:`${t} (answer ${e}); ${n}.`}}function qr(e,t){let n=nb(e),o={...n,...t.complaint};return e>=500&&Object.assign(o,{is_fault:!0,remedy:o.remedy||n.remedy}),new Q(e,o,t)}async function ob(e){try{return qr(e.status,await e.json())}catch{return qr(e.status,{})}}async function Rn(e,t){return(await Kr(e,{signal:t})).json()}var et=e=>Rn(`/api/run?file=${encodeURIComponent(e)}`);async function jt(e,t){return(await Kr(e,{method:"POST",body:JSON.stringify(t)})).json()}async function An(e,t){return(await Kr(e,{method:"PUT",body:JSON.stringify(t)})).json()}async function Zi(e){return(await Kr("/api/document",{method:"POST",body:JSON.stringify(e)})).blob()}function kd(e,t){return new Promise((n,o)=>{let i=new XMLHttpRequest;i.open("POST",`/api/mesh?name=${encodeURIComponent(e.name)}`),i.setRequestHeader("X-Bench-Key",Vr),i.upload.onprogress=s=>t(s.total?s.loaded/s.total:0),i.onerror=()=>o(new Q(0,Kl)),i.onload=()=>{let s;try{s=JSON.parse(i.responseText)}catch{return o(i.status?qr(i.status,{}):new Q(0,Kl))}i.status===200?n(s):o(qr(i.status,s))},i.send(e)})}var si={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},xd=e=>(...t)=>({_$litDirective$:e,values:t}),Gr=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,o){this._$Ct=t,this._$AM=n,this._$Ci=o}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}};var{I:q1}=$d;var Td=e=>e.strings===void 0;var ib={},Sd=(e,t=ib)=>e._$AH=t;var St=xd(class extends Gr{constructor(e){if(super(e),e.type!==si.PROPERTY&&e.type!==si.ATTRIBUTE&&e.type!==si.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!Td(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[t]){if(t===mn||t===f)return t;let n=e.element,o=e.name;if(e.type===si.PROPERTY){if(t===n[o])return mn}else if(e.type===si.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(o))return mn}else if(e.type===si.ATTRIBUTE&&n.getAttribute(o)===t+"")return mn;return Sd(e),t}});function Yr(e){let n=new DataView(e).getUint32(12,!0),o=JSON.parse(new TextDecoder().decode(new Uint8Array(e,20,n))),i=20+n+8,s=(r,c,d)=>{let{bufferView:h,count:b}=o.accessors[r];return new c(e,i+(o.bufferViews[h].byteOffset??0),b*d)};return o.meshes.map(r=>{let[{attributes:c,indices:d,material:h}]=r.primitives;return{name:r.name,positions:s(c.POSITION,Float32Array,3),indices:s(d,Uint32Array,1),colour:o.materials[h].pbrMetallicRoughness.baseColorFactor}})}function Rd(e,t,n="upright"){let[o,i,s]=n==="upright"?[1,2,1]:[2,1,-1],r=[],{positions:c,indices:d}=e;for(let h=0;h<d.length;h+=3){let b=[];for(let $=0;$<3;++$){let y=3*d[h+$],S=3*d[h+($+1)%3],P=c[y+i]-t,F=c[S+i]-t;if(P>0==F>0)continue;let K=P/(P-F),G=[1e3*(c[y]+K*(c[S]-c[y])),1e3*s*(c[y+o]+K*(c[S+o]-c[y+o]))];P>0?b.push(G):b.unshift(G)}b.length===2&&r.push([b[0],b[1]])}return r}function Ad(e){let t=([i,s])=>`${i.toFixed(3)} ${s.toFixed(3)}`,n=new Map;for(let i of e){let s=t(i[0]);n.set(s,[...n.get(s)??[],i])}let o=[];for(let i of e){let s=[],r=n.get(t(i[0]))?.shift();for(;r;)s.push(r[0]),r=n.get(t(r[1]))?.shift();s.length>2&&o.push(s)}return o}function Gl(e){let t=e.positions,[n,o,i,s,r,c]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let h=0;h<t.length;h+=3)i=Math.min(i,t[h]),s=Math.max(s,t[h]),r=Math.min(r,t[h+1]),c=Math.max(c,t[h+1]),n=Math.min(n,t[h+2]),o=Math.max(o,t[h+2]);let d=n+(o-n)*.50137;return{loops:Ad(Rd(e,d)),left:1e3*i,right:1e3*s,floor:1e3*r,brim:1e3*c,cut_y:-1e3*d}}function Md(e,t){let[n,o]=[t.floor/1e3,(t.brim-t.floor)/1e3];return[.999,.50137].map(s=>Ad(Rd(e,n+s*o,"level"))).reduce((s,r)=>Pd(r)>1.001*Pd(s)?r:s)}function Pd(e){let[t,n]=[1/0,-1/0];for(let o of e)for(let[i]of o)[t,n]=[Math.min(t,i),Math.max(n,i)];return Math.max(0,n-t)}function Yl(e,t){let[n,o]=[1/0,-1/0];for(let i of e.loops)i.forEach(([s,r],c)=>{let[d,h]=i[(c+1)%i.length];if(!(Math.min(r,h)>t||Math.max(r,h)<t))for(let b of r===h?[s,d]:[s+(t-r)/(h-r)*(d-s)])n=Math.min(n,b),o=Math.max(o,b)});return n<=o?[n,o]:[e.left,e.right]}function Dd(e){return e.split("/").slice(1).map(t=>t.replaceAll("~1","/").replaceAll("~0","~"))}function E(e,t){let n=e;for(let o of Dd(t)){if(n===null||typeof n!="object")return;n=n[o]}return n}function Ye(e,t,n){return Zl(e,Dd(t),n)}function Zl(e,t,n){let[o,...i]=t;if(o===void 0)return n;if(Array.isArray(e)){let c=[...e],d=Zl(c[Number(o)],i,n);return d===void 0?c.splice(Number(o),1):c[Number(o)]=d,c}let s={...e??{}},r=Zl(s[o],i,n);return r===void 0?delete s[o]:s[o]=r,s}var hn=["pour","pipe","apart"],a={view:"reading",formula_of:"pour",fats:[],catalogue:[],file:"",version:null,shipped:!1,run:{},formulas:{},past:[],future:[],saving:{is:"saved"},batch:0,is_old:!1,dangers:{run:[],apart:[]},open:new Set,folded:new Set,units:sb(),said:""};function sb(){let e=localStorage.getItem("units");return e==="metric"||e==="us"?e:"both"}function Js(e){return e==="run"?a.run:a.formulas[e]?.document}var Ed=()=>{},Ql=!1;function Ld(e){Ed=e}function T(){Ql||(Ql=!0,queueMicrotask(()=>{Ql=!1,Ed()}))}function Qi(e,t){e.delete(t)||e.add(t),T()}var Od=40,rb=2e3,Xl=0;function Mn(){lb()}async function Xi(e){return jt("/api/gauge",e)}async function Wd(e){let t=await Zi({kind:"glb",gauge:e}),n=Yr(await t.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function es(e){let[t,n]=await Promise.all([Xi(e),Wd(e)]),o=Gl(n);return{gauge:t,outline:o,above:Md(n,o)}}async function ab(e){let{pockets:t}=await Xi(e),n=t[0].brim_mm-t[0].floor_mm-.001,o=Array.from({length:Od},(i,s)=>`${(n*(s+1)/Od).toFixed(4)} mm`);return jt("/api/gauge",{...e,depth:o})}async function lb(){let e=E(a.run,"/pour/mould");if(typeof e!="string")return;let t=++Xl,n=ri(e,a.files?.moulds);try{let[o,i]=await Promise.all([ab({file:n}),Wd({file:n})]);if(t!==Xl)return;a.measured={mould:n,gauge:o,outline:Gl(i)},a.measuring_failed=void 0}catch(o){if(t!==Xl)return;if(!(o instanceof Q))throw o;a.measured=void 0,a.measuring_failed=o.message,o.may_pass&&window.setTimeout(Mn,rb)}T()}var Qr=28.349523125,Id=25.4,ub=29.5735295625;function gn(e,t){return e.toFixed(t).replace(/^-(0(\.0*)?)$/,"$1")}function z(e,t){return cb(gn(e,t))}var cb=e=>e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function Dn(e){let t=[1,2,3].find(n=>Number(e.toFixed(n))!==0);return t!==void 0?`${gn(e,t)} %`:eu(e)?"just below 0 %":"0.0 %"}var eu=e=>e<0||Object.is(e,-0),Nd=e=>Math.abs(e-Math.round(e))<1e-6;function Cd(e){return e?[0,1,2,3].find(t=>Nd(e*10**t))??3:0}function Bd(e){return Math.max(0,Math.ceil(-Math.log10(e)-1e-9))}function pb(e){return[0,1,2].find(t=>e.every(n=>Nd(n*10**t)))??3}function Xr(e,t,n){return e==="metric"?[t,""]:e==="us"?[n,""]:[t,n]}function Pt(e,t){let n=s=>e[`${t}${s}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-pb([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var zd=.001;function Zr(e,t,n,o,i=1e-9){let s=10**n;return gn(o==="nearest"?e/t:Math.floor((e+i)/t*s)/s,n)}var Fd=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function Hd(e){if(!Fd.some(t=>Math.abs(t*10-e)<1e-9||Math.abs(t-e)<1e-9))return Fd.find(t=>Math.abs(t*Qr-e)<.6*zd)}function ze(e,t,n="nearest"){let o=t.scale_step_g||.1,i=Hd(o),s=Math.min(.6*zd,o/2),r=i?Zr(t.g,1,Bd(o),n):Zr(t.g,1,Cd(o),n,s),c=i?Zr(t.g,Qr,Cd(i),n,s):Zr(t.g,Qr,Bd(o/Qr),n),[d,h]=[`${t.g_text??r} g`,`${t.oz_text??c} oz`];return(t.reads?t.reads==="oz":i!==void 0)&&e==="both"?[h,d]:Xr(e,d,h)}function jd(e){let t=Hd(e);return t?`${t} oz`:`${z(e,3)} g`}var Se=(e,t,n=1,o="nearest")=>ze(e,{g:t,scale_step_g:10**-n},o);function gt(e,t,n=1){return Xr(e,`${gn(t,n)} ml`,`${gn(t/ub,2)} fl oz`)}function Rt(e,t){return Xr(e,`${z(t,1)} mm`,db(t))}function db(e){let t=Math.round(Math.abs(e)/Id*16),n=e<0&&t?"-":"",o=t%16,i=16;for(;o&&o%2===0;)o/=2,i/=2;let s=Math.floor(t/16),r=o?`${o}/${i}`:"";return`${n}${[s||!o?String(s):"",r].filter(Boolean).join(" ")} in`}var ai=([e])=>e,se=([e,t])=>t?`${e} (${t})`:e;function Ud(e,t){return Xr(e,`${gn(t,0)} \xB0C`,`${gn(t*1.8+32,0)} \xB0F`)}function ts(e){let t=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(e??""));if(!t)return;let n=Number(t[1]??0)+Number(t[2].replace(",","."))/Number(t[3]??1),o={mm:1,cm:10,m:1e3}[t[4]]??Id;return n*o}function ns(e){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(e??""))?.[1]?.trim()??""}var ea=e=>/^\s*[+-]?\d[\d.,/\s]*$/.test(e);function xo(e){let t=Math.round(e/60);return e>=60&&e%60===0&&t<90?`${t} min`:e<90?`${Math.round(e)} s`:t<90?`${t} min`:`${Math.floor(t/60)} h ${t%60} min`}var st=(e,t)=>`f-${e}${t.replaceAll(/[^\w]/g,"-")}`;function D(e,t){return E(Js(e),t)}var Me=(e,t)=>String(D(e,t)??"");function To(e,t){let n=D(e,t);return Array.isArray(n)?n:[]}function Ze(e,t,n){return Object.fromEntries(Object.entries(D(e,t)??{}).filter(([o])=>!n.includes(o)))}function Yn(e,t){let n=a.complaint;if(!(!n||n.field!==t&&!n.field.startsWith(`${t}/`)))return os(e)?fn(n):void 0}function At(e,t){return a.complaint?.field===t?Yn(e,t):void 0}function os(e){let t=a.complaint,n=e==="run"?a.file:a.formulas[e]?.file;return!t||n===void 0?!1:t.file===""||t.file===n||t.file.endsWith(`/${n}`)}function mb(e,t){let n=t.slice(0,t.lastIndexOf("/"));return Object.keys(D(e,n)??{}).length>1?t:n}function io(){let e=a.complaint;if(e)for(let t of["run",...hn])for(let n=e.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Yn(t,n)&&document.getElementById(st(t,n));if(o)return o}}function fb(e,t){let n=e.of??"run";if(e.optional&&t.trim()==="")return;if(e.number)return/^\s*\d+([.,]\d+)?\s*$/.test(t)?Number(t.trim().replace(",",".")):t;if(e.count)return/^\s*\d{1,9}\s*$/.test(t)?Number(t):t;let o=hb(e,n);return o&&ea(t)?`${t.trim()} ${o}`:t}function hb(e,t){return ns(D(t,e.at))||e.unit||""}var Gt=(e,t,n)=>t||n?u`<p id="${e}-said" class=${t?"complaint":"hint"}>${t??n}</p>`:f,tu=!1;addEventListener("pointerdown",()=>tu=!0,!0);for(let e of["pointerup","pointercancel"])addEventListener(e,()=>tu=!1,!0);function nu(){a.typed=void 0,tu?addEventListener("pointerup",()=>setTimeout(T),{once:!0}):T()}function v(e){let t=e.of??"run",n=st(t,e.at),o=D(t,e.at),i=a.typed?.key===n?a.typed.text:o===void 0?"":String(o),s=Yn(t,e.at),r=h=>{let b=h.target.value;a.typed={key:n,text:b};let $=fb(e,b);_t(t,$===void 0&&e.takes_part?mb(t,e.at):e.at,$),T()},d=(a.typed?.key===n&&typeof o=="string"&&o!==i?`taken as ${o}`:"")||e.hint;return u`<div
    class="field ${e.wide?"wide":""} ${e.short?"short":""} ${s?"wants":""}"
  >
    <label for=${n}>${e.label}</label>
    <input
      id=${n}
      .value=${St(i)}
      @input=${r}
      @blur=${nu}
      autocomplete="off"
      spellcheck="false"
      inputmode=${e.count?"numeric":e.number?"decimal":"text"}
      aria-invalid=${s?"true":"false"}
      aria-describedby=${[s||d?`${n}-said`:"",e.described_by??""].filter(Boolean).join(" ")||f}
    />
    ${Gt(n,s,d)}
  </div>`}var qs=new Map,Vs=()=>qs.clear(),ou=e=>e.slice(0,e.lastIndexOf("/")+1);function is(e){let t=iu(e);return Array.isArray(t)?[...t,...a.fats]:a.fats}function iu(e){let t=D(e,"/fats_from"),n=a.formulas[e]?.file;if(typeof t!="string"||!t.endsWith(".json")||n===void 0)return;let o=`${n}
${t}`;return qs.has(o)||(qs.set(o,"waiting"),gb(t,n).then(i=>{qs.set(o,i),T()})),qs.get(o)}async function gb(e,t){for(let n of new Set([ou(t)+e,e])){let o=await Jd(n);if(Array.isArray(o?.fats))return o.fats.map(_b)}return"none"}async function Jd(e){try{return JSON.parse((await et(e)).text)}catch{return}}function _b(e){return{...{id:String(e.id??""),name:String(e.name??e.id??"")},own:$b(e.saponification_value)}}function $b(e){if(e===null||typeof e!="object")return String(e??"");let{low:t,high:n}=e;return`${String(t)} to ${String(n)}`}async function ta(e,t){let n=e.fats_from;if(typeof n!="string"||!ou(t))return e;let o=ou(t)+n;return await Jd(o)?{...e,fats_from:o}:e}var qd=new Map,Ks=[],ss;function na(){Ks.length=0;for(let{file:e,shipped:t}of a.files?.moulds??[])t||Ks.push(e);ss===void 0&&Vd()}function bb(e){e!==ss&&!Ks.includes(e)&&Ks.push(e),ss===void 0&&Vd()}async function Vd(){for(;(ss=Ks.shift())!==void 0;)qd.set(ss,await wb(ss)),T()}async function wb(e){try{let{pockets:t}=await Xi({file:e});return{brimful_ml:t[0].brimful_ml,cavities:t.length}}catch(t){if(!(t instanceof Q))throw t;let{field:n,problem:o,remedy:i}=t.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}function Kd(e){let t=qd.get(e);return t||bb(e),t?"complaint"in t?`your own, ${e}; it cannot be measured: ${t.complaint}`:`${se(gt(a.units,t.brimful_ml))}, ${t.cavities} in one; your own, ${e}`:`your own, ${e}; measuring ...`}var yb=400,Yd=2e3,uu=300,su=0,so,li={},ui=[],Mt=e=>`${JSON.stringify(e,null,2)}
`,cu=e=>`typed ${a.files?.folder??""} ${e}`;function Zd(e){li=e,ui=[]}function Gs(e){try{let t={version:a.version,text:Mt(a.run),copy:e};localStorage.setItem(cu(a.file),JSON.stringify(t))}catch{}}function pu(e){try{return JSON.parse(localStorage.getItem(cu(e))??"null")??void 0}catch{return}}var Ys=e=>localStorage.removeItem(cu(e));function ro(){clearTimeout(su),su=window.setTimeout(()=>{So()},yb)}async function So(){if(clearTimeout(su),so)return await so,a.saving.is==="waiting"?So():void 0;a.saving.is!=="conflict"&&(so=vb().finally(()=>so=void 0),await so)}async function vb(){let e=a.run;if(e===li&&!a.shipped)return a.saving={is:"saved"},T();let t=a.shipped?a.file:void 0,n=t?En(t.split("/").at(-1),a.files?.runs??[]):a.file,o=t?null:a.version;t&&Gs(n);let i=Mt(e);ui=[...new Set(ui).add(i)];try{let s=await An("/api/run",{file:n,version:o,text:i,from:t});Ys(a.file),ru(s,e,t)}catch(s){if(!(s instanceof Q))throw s;let r=s.answer;s.status===409&&t?kb(r,e,t):s.status===409&&r.text===i?ru(r,e,t):s.status===409&&Qd(r)?Xd(r):s.status===409?Ab(r):a.saving={is:"failed",line:fn(s.complaint)},s.may_pass&&window.setTimeout(Zs,Yd)}T()}function kb(e,t,n){if(du(t,JSON.parse(e.text)))return ru(e,t,n);a.files?.runs.push({file:e.file,name:e.file,note:"",shipped:!1}),ro()}var Qd=({text:e})=>e!==null&&ui.includes(e);function Xd(e){ui=[],a.version=e.version,ro()}function Zs(){a.saving.is==="failed"&&(a.saving={is:"waiting"}),ro()}function du(e,t){let[n,o]=[e,t];for(let i of["/$schema",...em(e)])[n,o]=[Ye(n,i,void 0),Ye(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function em(e){return["/pour/mould","/pour/formula","/pipe/formula",...(Array.isArray(e.perch)?e.perch:[]).map((o,i)=>`/perch/${i}/mould`)].filter(o=>E(e,o)!==void 0)}function ru(e,t,n){ui=[];let o=JSON.parse(e.text);n&&(a.file=e.file,a.shipped=!1,localStorage.setItem("run",e.file),a.files?.runs.push({file:e.file,name:String(o.name),note:"",shipped:!1}),xb(t,o),$t()),a.version=e.version,li=a.run===t?t:o,n&&a.run!==t&&(li=o),a.saving=a.run===li?{is:"saved"}:{is:"waiting"},a.saving.is==="waiting"&&ro(),Zn()}function xb(e,t){for(let n of em(e)){let[o,i]=[E(e,n),E(t,n)];if(o===i||typeof i!="string")continue;let s=r=>E(r,n)===o?Ye(r,n,i):r;a.run=s(a.run);for(let r of[...a.past,...a.future])r.run=s(r.run)}}function En(e,t){let[,n,o]=/^(.*?)((?:\.\w+)?\.json)$/.exec(e)??["",e,".json"];for(let i=1;;++i){let s=i===1?e:`${n}_${i}${o}`;if(!t.some(r=>r.file===s))return s}}var mu=e=>`typed formula ${a.files?.folder??""} ${e}`;function rs(e){if(!e.shipped)try{let t={version:e.version,document:e.document};localStorage.setItem(mu(e.file),JSON.stringify(t))}catch{}}function oa(e,t){let n=Tb(e.file);if(!n)return;if(Mt(n.document)===Mt(e.document))return fu(e.file);a.past.push(ci());let o={version:e.version,text:t};Object.assign(e,{document:n.document,version:n.version}),n.version!==o.version&&om(e,o),$t()}function Tb(e){try{return JSON.parse(localStorage.getItem(mu(e))??"null")??void 0}catch{return}}var fu=e=>localStorage.removeItem(mu(e)),au=Promise.resolve();function as(){let e=au.then(Sb);return au=e.catch(()=>{}),e}var hu=()=>au;async function Sb(){for(let e of hn){let t=a.formulas[e];!t||t.document===t.saved||t.clash||(t.shipped?await Pb(e,t):await tm(t))}}async function tm(e){let{file:t,version:n,document:o}=e,i=Mt(o);e.unanswered=[...new Set(e.unanswered).add(i)];try{nm(e,await An("/api/run",{file:t,version:n,text:i}),o)}catch(s){if(!(s instanceof Q)||s.status!==409)throw s;gu(e,s.answer),e.document!==e.saved&&!e.clash&&await tm(e)}}async function Pb(e,t){let n=t.file,{fats_from:o}=await ta(t.document,n);o!==t.document.fats_from&&(t.document={...t.document,fats_from:o});let i=t.document;a.shipped&&e!=="apart"&&await So();let s=a.files?.formulas??[];for(let r=0;r<50;++r){let c=En(n.split("/").at(-1),s);s.push({file:c,name:"",note:"",shipped:!1});try{nm(t,await An("/api/run",{file:c,version:null,text:Mt(i),from:n}),i),e!=="apart"&&Rb(e,n,c);return}catch(d){if(!(d instanceof Q)||d.status!==409)throw s.splice(s.findIndex(h=>h.file===c),1),d}}}function nm(e,{file:t,version:n},o){Object.assign(e,{file:t,version:n,shipped:!1,saved:o,unanswered:[]}),e.document===o?fu(t):rs(e),rm(t,o)}function gu(e,t){if(t.text===Mt(e.document))return lu(e,e.document,t.version);let n=t.text!==null&&e.unanswered?.includes(t.text);if(e.unanswered=[],n)return void Object.assign(e,{version:t.version,saved:{},clash:void 0});let o=t.text===null?void 0:_u(t.text);if(!(e.document===e.saved)||!o)return om(e,t);a.past.push(ci()),a.typed=void 0,a.said=`${e.file} had changed underneath and was read again; undo brings back what stood here.`,lu(e,o,t.version)}function lu(e,t,n){Object.assign(e,{document:t,saved:t,version:n,clash:void 0,unanswered:[]}),fu(e.file),rm(e.file,t)}function om(e,t){e.clash={version:t.version,text:t.text},rs(e),a.is_old=!0,a.said=`${e.file} has changed underneath. Say which is to stay.`,T()}function im(e){let t=e.clash?.text?_u(e.clash.text):void 0;if(!t)return a.said=`What is in ${e.file} now is no formula; keep what is on this page.`,a.complaint={file:e.file,field:"",problem:"what is in it now is no formula",remedy:"keep what is on this page",line:""},T();a.past.push(ci()),a.typed=void 0,lu(e,t,e.clash.version),$t(),T()}function sm(e){e.clash&&(Object.assign(e,{version:e.clash.version,saved:{},clash:void 0}),rs(e),$t(),T())}function rm(e,t){let n=a.files?.formulas.find(o=>o.file===e);n&&Object.assign(n,{name:String(t.name??""),note:String(t.note??"")})}function Rb(e,t,n){for(let o of e==="pour"?["pour","pipe"]:["pipe"]){let i=`/${o}/formula`,s=r=>String(E(r,i)??"").endsWith(t.split("/").at(-1));if(s(a.run)){a.run=Ye(a.run,i,n);for(let r of[...a.past,...a.future])s(r.run)&&(r.run=Ye(r.run,i,n))}}a.saving={is:"waiting"},ro()}function Ab(e){ui=[],a.saving={is:"conflict",file:e.file,version:e.version,text:e.text},a.said="The file has changed underneath."}function am(){if(a.saving.is!=="conflict"||a.saving.text===null)return;let{file:e,version:t,text:n}=a.saving,o=_u(n);if(!o)return a.saving={is:"failed",line:`what is in ${e} now is no run; keep what is on this page`},a.version=t,T();a.past.push(ci()),a.run=li=o,a.is_old=!0,a.version=t,a.saving={is:"saved"},Ys(a.file),Mn(),pi().then(()=>Po()),Zn(),T()}function _u(e){try{return JSON.parse(e)}catch{return}}function lm(){a.saving.is==="conflict"&&(a.version=a.saving.version,a.saving={is:"waiting"},li={},So(),T())}var Gd;async function Zn(){if(Gd?.abort(),a.shipped||a.version===null)return;let e=Gd=new AbortController,[t,n]=[a.file,a.version],o=`/api/changed?file=${encodeURIComponent(t)}&version=${n}&wait=20`;for(;!e.signal.aborted;)try{let i=await Rn(o,e.signal);if(e.signal.aborted||!i.changed)continue;so&&await so,a.file===t&&a.version===n&&await Mb(t,i.version);return}catch{await new Promise(i=>window.setTimeout(i,Yd))}}async function Mb(e,t){let n=a.version;await new Promise(i=>window.setTimeout(i,uu));let o=t?await et(e):{file:e,version:"",text:""};if(so&&await so,a.file===e){if(a.version!==n)return void Zn();if(o.text===Mt(a.run))return a.version=o.version,void Zn();if(Qd(o))return Xd(o),void Zn();a.saving={is:"conflict",file:e,version:t&&o.version,text:t&&o.text},a.said="The file has changed underneath.",T()}}var Qs,ia=new Map,um=()=>ia.clear();function cm(){return Qs||(Qs=[],jt("/api/list",{what:"tips"}).then(({tips:e})=>{Qs=e,T()},dm(()=>Qs=void 0))),Qs}function pm(e){let t=Xs(e),n=ia.get(t);return n||!e||a.typed?n??[]:(ia.set(t,[]),et(t).then(({text:o})=>{let{tips:i}=JSON.parse(o);ia.set(t,(Array.isArray(i)?i:[]).map(({name:s})=>({name:String(s)}))),T()},dm(()=>{})),[])}var dm=e=>t=>{if(!(t instanceof Q))throw t;e()};var mm=700,ao=new Map,sa=new Set,fm=!1;async function hm(){let e=Db(),t=new Set([...er()].map(n=>n.file));for(let n of ao.keys())!e.has(n)&&!t.has(n)&&ao.delete(n);for(let n of sa)e.has(n)||sa.delete(n);for(let n of e)ao.has(n)||ao.set(n,await ra(n))}async function ra(e,t=null){if(sa.has(e))return null;try{let n=`/api/changed?file=${encodeURIComponent(e)}&version=${t??""}&wait=0`;return(await Rn(n)).version}catch(n){if(!(n instanceof Q)||n.status!==422)throw n;return sa.add(e),null}}function Db(){let e=new Set,t=n=>{typeof n!="string"||!n||(e.add(Xs(n)),n.includes("..")||e.add(n))};t(E(a.run,"/pour/mould")),t(E(a.run,"/pipe/beads/tips_from"));for(let n of Array.isArray(a.run.perch)?a.run.perch:[])t(E(n,"/mould"));for(let n of["pour","pipe"])a.formulas[n]||t(E(a.run,`/${n}/formula`));for(let n of er()){let o=n.document.fats_from;typeof o=="string"&&o&&e.add(n.file.slice(0,n.file.lastIndexOf("/")+1)+o).add(o)}return e}var er=()=>new Set(hn.flatMap(e=>a.formulas[e]??[]));function gm(){if(fm)return;fm=!0;let e=()=>{wu().then(()=>window.setTimeout(e,mm),()=>window.setTimeout(e,3*mm))};e()}var $u;function wu(){return $u??=Eb().finally(()=>$u=void 0),$u}async function Eb(){if(!a.file)return;for(let t of er())await Ob(t);let e=Lb();for(let[t,n]of ao){let o=await ra(t,n);ao.get(t)===n&&o!==n&&(e.push(t),ao.set(t,o))}e.length&&await Cb(e[0])}function Lb(){return[...er()].flatMap(({file:e,version:t})=>{let n=ao.get(e)??t;return ao.delete(e),n===t?[]:[e]})}var bu=e=>(e.clash??e).version;async function Ob(e){if(e.shipped)return;let[t,n]=[e.file,bu(e)];if(await ra(t,n)===n||(await hu(),bu(e)!==n||e.file!==t||!er().has(e)))return;$m(t),await bm();let o=await Wb(t);await hu(),bu(e)===n&&gu(e,o),Vs(),$t()}async function Wb(e){let t=await ra(e);return t===null?{version:t,text:null}:et(e)}async function Cb(e){$m(e),await bm(),Vs(),um(),a.measured=void 0,Mn(),na(),await pi(),$t()}var _m=0,aa=()=>_m;function $m(e){++_m,a.is_old=!0,a.changed_beside=e,T()}var bm=()=>new Promise(e=>window.setTimeout(e,uu));var wm=e=>{let t=e.flatMap(n=>a.formulas[n]??[]);return t.filter((n,o)=>n.clash&&t.indexOf(n)===o)},lo=e=>wm(e==="apart"?["apart"]:["pour","pipe"])[0];function tr(){return u`${Bb()}
  ${wm(hn).map(e=>ym(e.file,e.clash.text===null,()=>im(e),()=>sm(e)))}`}function Bb(){let{saving:e}=a;return e.is==="conflict"?ym(a.file,e.text===null,am,lm):f}function ym(e,t,n,o){let i=`conflict-${e.replaceAll(/[^\w]/g,"-")}`;return u`<section class="banner" aria-labelledby=${i}>
    <h2 id=${i}>${e} has ${t?"been taken away":"changed"} underneath</h2>
    <p>Another hand or tab wrote the file. Nothing typed here was written over it. Which is to stay?</p>
    <div class="choice">
      ${t?f:u`<button type="button" @click=${n}>Take what is in the file</button>`}
      <button type="button" @click=${o}>Keep what is on this page</button>
    </div>
  </section>`}var nr=()=>a.formulas.apart?"apart":"run";function vm(e){a.dangers[nr()]=e.cautions.filter(t=>t.severity==="danger").map(({text:t,topic:n})=>({text:t,is_of_heat:n==="heat"}))}function km(e){Fb(e)&&(a.dangers[nr()]=[{text:fn(e),is_of_heat:!1}])}var Fb=({problem:e})=>/lye[- ]heavy|superfat\b[^;]*?(\s[-−]\d|below (zero|0))/i.test(e),xm=u`<span aria-hidden="true">⚠</span> Danger`;function Tm(){let e=a.view==="start"||nr()==="apart",t=a.dangers.run.map(({text:n})=>({from:e?`In the run "${String(a.run.name??a.file)}": `:"",text:n}));return[...a.dangers.apart.map(({text:n})=>({from:"",text:n})),...t]}var yu=()=>Tm().length>0;function Sm(){let e=Tm(),t=zb();return!e.length&&!t?f:u`<section class="foremost" aria-label="Danger, and figures from before">
    ${e.length?u`<div role="alert" class="dangers">
            ${e.map(({from:n,text:o})=>u`<p class="danger"><strong>${xm}</strong> ${n}${o}</p>`)}
          </div>`:f}
    ${t?u`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${t}</p>
            ${Ib()?u`<button type="button" @click=${Nb}>To the question</button>`:f}
          </div>`:f}
  </section>`}var Ib=()=>lo(nr())!==void 0&&a.view!=="start";function Nb(){let e=document.querySelector(".banner h2");e&&(e.tabIndex=-1,e.focus({preventScroll:!0}),e.scrollIntoView({block:"start"}))}function zb(){if(!a.file||a.view==="reading")return"";let e=lo(nr());return e?`${e.file} changed underneath: what is struck through is of neither text. Say which is to stay.`:a.is_old&&a.changed_beside?`${a.changed_beside} changed underneath: what is struck through is not to be weighed.`:""}function or(e,t="",n){let o=di(e,n);return o.length?u`<div class="dangers" id=${t||f}>
    ${o.map(i=>u`<p class="danger"><strong>${xm}</strong> ${i}</p>`)}
  </div>`:f}function di(e,t){let n=a.dangers[e==="apart"?"apart":"run"].filter(r=>!r.is_of_heat).map(r=>r.text).filter(r=>t===void 0||Hb(r,t));if(e==="apart")return n;let o=r=>String(a.formulas[r]?.document.name??""),[i,s]=[o(e),o(e==="pour"?"pipe":"pour")];return n.filter(r=>!s||!r.includes(s)||i!==""&&r.includes(i))}function Hb(e,t){let n=/\bBatches of (\d+) pieces?: /.exec(e);return!n||Number(n[1])===t}var Pm="examples/spring_order.run.json";async function Rm(){a.files=await Rn("/api/files");try{await mi(jb(a.files))}catch(n){a.fault=n instanceof Q?n.message:`The run opened last is no run any more: ${String(n)}`,a.view="start",localStorage.removeItem("run")}let[e,t]=await Promise.all([jt("/api/list",{what:"fats"}),jt("/api/list",{what:"moulds"})]);a.fats=e.fats,a.catalogue=t.moulds,T()}function jb(e){let t=localStorage.getItem("run"),n=i=>e.runs.some(s=>s.file===i);return e.open?e.open:t&&n(t)?t:e.runs.find(i=>!i.shipped)?.file??(n(Pm)?Pm:e.runs[0]?.file??"")}async function mi(e){if(!e)return a.view="start",T();a.saving.is==="waiting"&&await So();let t=await et(e),n=JSON.parse(t.text);Zd(n),Object.assign(a,{view:"run",file:e,run:n,version:t.version,shipped:t.shipped??!1,formulas:{},past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,batch:0,complaint:void 0,typed:void 0,measured:void 0,saving:t.shipped?{is:"shipped"}:{is:"saved"}}),localStorage.setItem("run",e);let o=await Ub(e,n);if(o)return mi(o);Jb(e,t);let i=Po();Mn(),await Promise.all([i,pi()]),Zn(),gm(),T()}async function Ub(e,t){let n=pu(e);if(!n?.copy||!a.files?.runs.some(s=>s.file===n.copy))return;let o=await et(n.copy),i=JSON.parse(n.text);if(!(JSON.stringify(i)===JSON.stringify(t)||!du(i,JSON.parse(o.text))))return Ys(e),n.copy}function Jb(e,t){let n=pu(e);if(!n)return;if(n.text===Mt(a.run))return Ys(e);let o=JSON.parse(n.text);a.past.push({run:a.run,formulas:{}}),a.run=o,n.version===t.version||t.shipped?(a.saving={is:"waiting"},ro()):(a.saving={is:"conflict",file:e,version:t.version,text:t.text},Gs())}function ir(e,t){return(e.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+t}async function Am(e){let t=a.run,n=t.losses??{},o={schema:"brimwright.run/1",name:e.name,note:`Losses, scales and spoilage were taken over from "${String(t.name)}": check them.`,sell:e.cavities,spoilage:t.spoilage??"0 %",pour:{mould:e.mould,formula:e.formula,line:{below_brim:e.deep_mm>15?"5 mm":"0 mm"}},losses:{pour:n.pour??{}},scales:t.scales??{}};t.money&&(o.money=t.money),await qb(ir(e.name,".run.json"),o)}async function qb(e,t){for(let n=0;n<50;++n){let o=En(e,a.files.runs);try{return await An("/api/run",{file:o,version:null,text:Mt(t)}),a.files.runs.push({file:o,name:String(t.name),note:"",shipped:!1}),await mi(o)}catch(i){if(!(i instanceof Q)||i.status!==409)throw i;a.files.runs.push({file:o,name:o,note:"",shipped:!1})}}}var Vb="examples/plain_bars.run.json",vu;function sr(e){Vs(),a.view="formula",a.formula_of=e,a.picking=void 0,a.typed=void 0,T(),window.scrollTo(0,0),requestAnimationFrame(()=>document.querySelector("#formula-title")?.focus({preventScroll:!0}))}function Mm(e){sr(e),requestAnimationFrame(()=>requestAnimationFrame(()=>io()?.focus()))}async function ku(e){let t=["pour","pipe"].find(n=>a.file&&a.formulas[n]?.file===e);if(t)return sr(t);a.file||await mi(Vb),Kb(e,await et(e))}function Kb(e,t){vu={past:a.past,future:a.future},Object.assign(a,{past:[],future:[],plan:void 0,complaint:void 0});let n=a.formulas.apart=Tu(e,t);oa(n,t.text),sr("apart"),Po()}async function rr(){let e=a.formulas.apart!==void 0;if(e){try{await as()}catch(t){if(!(t instanceof Q))throw t;return a.complaint=t.complaint,T(),!1}if(a.formulas.apart?.clash)return a.said="Say first which text of the formula is to stay.",window.scrollTo(0,0),T(),!1;delete a.formulas.apart,a.dangers.apart=[],Object.assign(a,{...vu,plan:void 0,complaint:void 0}),vu=void 0}return a.view="run",a.typed=void 0,T(),e&&await Po(),window.scrollTo(0,0),!0}async function xu(e){let t=a.formulas.apart.file;await rr()&&_t("run",`/${e}/formula`,t)}var Gb=e=>({schema:"brimwright.formula/1",name:e,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""});async function Dm(e){await Lm(Gb(e))}async function Em(e,t){let n=await et(e),{$schema:o,...i}=JSON.parse(n.text);await Lm(await ta({...i,name:t},e))}async function Lm(e){let t=a.files.formulas;for(let n=0;n<50;++n){let o=En(ir(String(e.name),".formula.json"),t);try{return await An("/api/run",{file:o,version:null,text:Mt(e)}),t.push({file:o,name:String(e.name),note:"",shipped:!1}),await ku(o)}catch(i){if(!(i instanceof Q)||i.status!==409)throw i;t.push({file:o,name:o,note:"",shipped:!1})}}}function Om(e){let t=a.run,n=t.pour,o=t.losses,i=Object.fromEntries(["cut","pots","batch"].filter(r=>t[r]!==void 0).map(r=>[r,t[r]]));i.batch&&(i.batch=Object.fromEntries(Object.entries(i.batch).filter(([r])=>r!=="whippings")));let s=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned};return{file:En("trial.run.json",a.files?.runs??[]),run:{schema:"brimwright.run/1",name:String(t.name??""),sell:t.sell??"",spoilage:t.spoilage??"",pour:{mould:ri(String(n?.mould??""),a.files?.moulds),...s,formula:e,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:t.scales??{},...i}}}var Yb=1e3,Zb=450,la=!1,Ro=!1,Su=0;function $t(){a.is_old=!0,la?Ro=!0:Po()}async function Po(){if(la){Ro=!0;return}la=!0,Wm(!1);try{do Ro=!1,await Qb();while(Ro)}finally{la=!1,Wm(!0),T()}}var Wm=e=>{document.documentElement.dataset.settled=String(e)};async function Qb(){let{file:e,run:t}=a,{apart:n}=a.formulas;try{if(await as(),await hm(),lo(n?"apart":"run"))return void(a.is_old=!0);let o=aa(),i=await jt("/api/plan",n?Om(n.file):{file:a.file,run:a.run});if(window.clearTimeout(Su),n!==a.formulas.apart||e!==a.file&&a.run!==t)return void(Ro=!0);a.plan=i,a.complaint=void 0,vm(i),a.is_old=Ro||o!==aa(),o===aa()&&(a.changed_beside=void 0)}catch(o){if(!(o instanceof Q))throw o;if(n!==a.formulas.apart)return void(Ro=!0);Xb(o)}T()}function Xb(e){a.is_old=!0,window.clearTimeout(Su);let t=()=>{a.complaint=e.complaint,km(e.complaint),T()};a.complaint||!a.plan?t():Su=window.setTimeout(t,Zb),e.may_pass&&window.setTimeout($t,Yb)}var ew=300,tw=1200,Pu="",Cm=0;function ci(){let e={};for(let t of hn){let n=a.formulas[t];n&&(e[t]={paper:n,document:n.document})}return{run:a.run,formulas:e}}function Fm(e=""){let t=performance.now();(!e||e!==Pu||t-Cm>tw||!a.past.length)&&(a.past.push(ci()),a.past.length>ew&&a.past.shift()),a.future=[],Pu=e,Cm=t}function _t(e,t,n){let o=Js(e);!o||E(o,t)===n||(Fm(`${e} ${t}`),Nm(e,Ye(o,t,n)))}function Im(e,t){let n=Js(e);n&&(Fm(),a.typed=void 0,Nm(e,t(n)))}function Nm(e,t){e==="run"?zm(t):nw(e,a.formulas[e],t)}function nw(e,t,n){if(t.document=n,rs(t),e==="apart")return Hm();ow(t),jm()}function ow(e){for(let t of["pour","pipe"])a.formulas[t]?.file===e.file&&(a.formulas[t]=e)}function zm(e){let t=a.run;a.run=e,E(t,"/pour/mould")!==E(e,"/pour/mould")&&Mn(),Bm(t)!==Bm(e)&&pi(),jm()}function Hm(){$t(),T()}function jm(){a.saving.is!=="conflict"&&(a.saving={is:"waiting"}),Gs(),$t(),ro(),T()}var Bm=e=>`${String(E(e,"/pour/formula"))}
${String(E(e,"/pipe/formula"))}`;function Um(e,t,n){let o=e.pop();if(o){t.push(ci()),Pu="";for(let i of hn){let s=o.formulas[i];!s||!a.formulas[i]||(s.paper.document=s.document,rs(s.paper),a.formulas[i]=s.paper)}a.typed=void 0,a.said=n,o.run===a.run?Hm():zm(o.run)}}var ls=()=>Um(a.past,a.future,"Undone"),ua=()=>Um(a.future,a.past,"Done again");function ri(e,t){let n=Xs(e);return t?.some(o=>o.file===n)?n:e}function Xs(e){let t=a.file.lastIndexOf("/");return t<0?e:iw(a.file.slice(0,t+1)+e)}function iw(e){let t=[];for(let n of e.split("/"))n===".."?t.pop():n!=="."&&t.push(n);return t.join("/")}async function pi(){for(let e of["pour","pipe"]){let t=E(a.run,`/${e}/formula`);typeof t=="string"&&t?await sw(e,ri(t,a.files?.formulas)):delete a.formulas[e]}T()}async function sw(e,t){if(a.formulas[e]?.file===t)return;let n=hn.map(o=>a.formulas[o]).find(o=>o?.file===t);if(n){a.formulas[e]=n;return}delete a.formulas[e];try{let o=await et(t),i=a.formulas[e]=Tu(t,o);oa(i,o.text)}catch{}}function Tu(e,{version:t,shipped:n,text:o}){let i=JSON.parse(o);return{file:e,version:t,shipped:n??!1,document:i,saved:i}}function Ru(e){for(let t=e?.closest("details");t;t=t.parentElement?.closest("details"))t.open=!0;e?.focus()}var _n=e=>()=>document.getElementById(e),Mo=(e,t)=>_n(st(e,t)),fi=e=>()=>document.querySelector(`#${e} :is(input, select, button[aria-pressed])`),rw=()=>document.activeElement;function ca(e){requestAnimationFrame(()=>Ru(e()))}function us(e,t,n,o=rw){a.said=t,Im(e,n),ca(o)}function rt(e,t,n,o,i){us(e,t,s=>Ye(s,n,o),i)}var Ao=(e,t,n)=>`${st(e,t)}-${n}`;function De(e,t){let n=At(e,t);return n?u`<p id=${st(e,t)} class="complaint" tabindex="-1">${n}</p>`:f}var Jm=(e,t,n)=>t.map(([o,i])=>u`<button type="button" aria-pressed=${o===e?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function Dt(e,t,n,o){return u`<div class="choice" role="group" aria-label=${e}>${Jm(t,n,o)}</div>`}function Z({of:e="run",question:t,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:s,answers:r,puts:c,then:d,hint:h}){let b=i?Ao(e,n,t.replaceAll(/\W+/g,"-")):st(e,o),$=i?void 0:At(e,o),y=S=>{if(S===s)return;let P=r.find(([F])=>F===S)[1];rt(e,`${t}: ${P}`,n,c(S),d&&Mo(e,d(S)))};return u`<div class="field asked ${$?"wants":""}">
    <p class="question" id="${b}-label">${t}</p>
    <div
      class="choice"
      role="group"
      id=${b}
      tabindex="-1"
      aria-labelledby="${b}-label"
      aria-describedby=${$||h?`${b}-said`:f}
    >
      ${Jm(s,r,y)}
    </div>
    ${Gt(b,$,h)}
  </div>`}function Au(e,t,n,o){let i=st("run",e),s=At("run",e),r=()=>rt("run",`${t}: ${n?"no":"yes"}`,e,n?void 0:o);return u`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${s?`${i}-said`:f}
        @click=${r}
      >
        ${t}
      </button>
    </div>
    ${Gt(i,s)}`}function Ln({label:e,of:t="run",at:n,answers:o,unsaid:i,optional:s,chosen:r,take:c}){let d=st(t,n),h=Yn(t,n),b=r??Me(t,n),$=!b||o.some(([P])=>P===b),y=[["",i],...$?[]:[[b,b]],...o];return u`<div class="field choose ${h?"wants":""}">
    <label for=${d}>${e}</label>
    <select
      id=${d}
      @change=${P=>{let F=P.target.value;c?c(F):_t(t,n,F||!s?F:void 0)}}
      aria-invalid=${h?"true":"false"}
      aria-describedby=${h?`${d}-said`:f}
    >
      ${y.filter(([P])=>P||s||!b).map(([P,F])=>u`<option value=${P} .selected=${St(P===b)}>${F}</option>`)}</select
    >${Gt(d,h)}
  </div>`}function uo(e,t,n=[]){let o=ri(Me("run",t),n);return Ln({label:e,at:t,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function Yt({of:e="run",at:t,name:n,title:o,add:i,blank:s,body:r}){let c=Ao(e,t,"part"),d=Ao(e,t,"add");return D(e,t)===void 0?u`<p class="choice">
      <button type="button" id=${d} @click=${()=>rt(e,`${o} added`,t,s,fi(c))}>
        ${i}
      </button>
    </p>`:u`<div class="part" id=${c} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Take away ${n}"
        @click=${()=>rt(e,`${o} taken away`,t,void 0,_n(d))}
      >
        Take away
      </button>
    </div>
    ${De(e,t)} ${r()}
  </div>`}var qm=(e,t)=>`folded ${e} ${t}`;function Vm(e,t){a.open.add(qm(e,t))}function me({of:e="run",name:t,pointers:n,summary:o,is_needed:i,body:s}){let r=qm(e,t);(i||n.some(h=>Yn(e,h)))&&a.open.add(r);let c=a.open.has(r);return u`<details .open=${c}>
    <summary @click=${h=>{h.preventDefault(),Qi(a.open,r)}}>${o}</summary>
    ${c?u`<div class="folded">${s()}</div>`:f}
  </details>`}function Km(e){return Math.min(a.batch,e.batches.length-1)}function pa(e){let{pieces:t,batches:n,batch_limits:o,around:i,...s}=e,r=n[Km(e)],{pour:c,pipe:d,dust:h,lye_pot:b,bottles:$}=r;return{...s,pour:c,pipe:d,dust:h,lye_pot:b,bottles:$,batch:r,whippings:d?.whippings??[],whole:e}}var Et=(e,t,n=`${t}s`)=>`${e} ${e===1?t:n}`,aw=e=>e.cut?["loaf","loaves"]:["cast","casts"];function Zt(e,{pieces:t,casts:n}){let o=e.cut?Et(t,"bar"):Et(t,"piece");return n===t?o:`${o} from ${Et(n,...aw(e))}`}var Do=e=>e===1?"once":`${e} times`,ar=e=>e.batches.length>1,vt=e=>e.pieces.batches>1;function Gm(e){return e.length<2?e.join(""):`${e.slice(0,-1).join(", ")} and ${e.at(-1)}`}function lw(e,{count:t,numbers:n}){return vt(e)?ar(e)?`made ${Do(t)}: ${t===1?"batch":"batches"} ${Gm(n.map(String))} of ${e.pieces.batches}`:`made ${Do(t)}`:""}function Eo(e){let{whole:t,batch:n}=e,o=lw(t,n);return u`<h3 class="batch-head of-plan ${ar(t)?"of-sizes":""}">
      One batch: ${Zt(t,n)}${o?u`<span>, ${o}</span>`:f}
    </h3>
    ${ar(t)?u`<div class="sizes">
            ${Dt("Which batch is weighed",String(Km(t)),t.batches.map((i,s)=>[String(s),Zt(t,i)+(i.count>1?`, ${Do(i.count)}`:"")]),uw)}
          </div>`:f}`}function uw(e){let t=a.plan;a.batch=Number(e),a.said=`One batch: ${Zt(t,t.batches[a.batch])}`,T()}function Qt(e){return vt(e.whole)?`one batch, ${Zt(e.whole,e.batch)}`:""}var Ym=({whippings:e})=>e.length>1||(e[0]?.count??0)>1;function hi(e,t){return Ym(e)?`one whipping: ${Zt(e.whole,t)}${t.count>1?`, whipped ${Do(t.count)}`:""}`:""}var Zm=({whippings:e})=>e.flatMap(t=>Array.from({length:t.count},()=>t)),da=e=>vt(e.whole)||Ym(e);function Qm(e){let{batches:t,fillings:n,cavities:o,to_stock:i}=e.pieces,s=e.batches.map(d=>`${ar(e)?`${d.count} of `:""}${Zt(e,d)}`),r=`Made in ${t} batches${ar(e)?": ":" of "}${Gm(s)}; ${Mu(n,o)}.`,c=e.batch_limits.filter(d=>d.sets);return u`<div class="batches-told of-plan">
    ${vt(e)?u`<p><b>${r}</b></p>`:f}
    ${i>0?u`<p>
            ${Et(i,e.cut?"bar":"piece")} beyond the order ${i===1?"goes":"go"} to
            stock.
          </p>`:f}
    ${c.length?u`<p><span class="called">What sets a batch:</span> ${c.map(d=>d.text).join(" ")}</p>`:f}
    ${e.around.length?u`<p><span class="called">One fewer, one more:</span> ${e.around.map(d=>d.text).join(" ")}</p>`:f}
  </div>`}var Mu=(e,t)=>`${Et(e,"filling")} of ${Et(t,"cavity","cavities")}`;var $n={at:"/perch"},ma=e=>`${$n.at}/${e}`,gi=e=>Me("run",`${ma(e)}/name`).trim()||`Decoration ${e+1}`,Ft=()=>E(a.run,"/cut")!==void 0,fa=e=>["mould","rod","drizzle"].find(t=>D("run",`${e}/${t}`)!==void 0),lr=e=>["per_piece","per_cast"].find(t=>D("run",`${e}/${t}`)!==void 0);function oe({key:e,label:t,shown:n,sum:o,size:i="plain",note:s}){let r=a.open.has(e),c=`sum-${e.replaceAll(/[^\w]/g,"-")}`,d=u`<span class="name">${t}${s?u`<small>${s}</small>`:f}</span>
    <span class="value ${i} ${a.is_old?"old":""}"
      ><b>${n[0]}</b>${n[1]?u` <i>${n[1]}</i>`:f}</span
    >`;return o?u`<div class="figure">
    <button
      type="button"
      class="line"
      aria-expanded=${r?"true":"false"}
      aria-controls=${r?c:f}
      @click=${()=>Qi(a.open,e)}
    >
      ${d}<span class="how" aria-hidden="true">${r?"\u2013":"="}</span>
    </button>
    ${r?cw(c,o):f}
  </div>`:u`<div class="figure"><div class="line">${d}</div></div>`}function _i(e,t,n){return oe({key:e,label:t,shown:["",""],sum:n})}function cw(e,t){return u`<div class="sum" id=${e}>
    <p class="formula">${t.formula}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${t.with.map(([n,o,i])=>u`<tr>
              <th scope="row">${n}</th>
              <td>${o}</td>
              <td>${i??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${t.sources?.length?u`<p class="sources">From: ${t.sources.join("; ")}.</p>`:f}
  </div>`}var re=({of:e="run",at:t})=>To(e,t),Ee=({of:e="run",at:t},n)=>Ao(e,`${t}/${n}`,"item"),ha=({of:e="run",at:t},n,o)=>Ao(e,`${t}/${n}`,o),pw=({of:e="run",at:t})=>st(e,t);function ur(e,t,n,o){let{of:i="run",at:s,stays:r,and:c=d=>d}=e;us(i,t,d=>c(Ye(d,s,n.length||r?n:void 0),n.length),o)}function He(e,t,n){let o=re(e);ur(e,`${n} added`,[...o,t],fi(Ee(e,o.length)))}function dw(e,t,n){let o=re(e).filter((r,c)=>c!==t),i=Math.min(t,o.length-1),s=o.length>(e.least??0);ur(e,`${n} taken away`,o,s?_n(ha(e,i,"drop")):Mo(e.of??"run",e.at))}function mw(e,t,n,o){let i=[...re(e)],[s]=i.splice(t,1);i.splice(t+n,0,s);let r=n<0?"earlier":"later",d=t+n===0||t+n===i.length-1?n<0?"later":"earlier":r;ur(e,`${o} moved ${r}`,i,_n(ha(e,t+n,d)))}function Ve(e,t,n){let o=re(e).length-1,i=o>=(e.least??0),s=e.in_order&&o>0;if(!i&&!s)return f;let r=(c,d,h)=>u`<button
      type="button"
      id=${ha(e,t,d)}
      ?disabled=${h}
      aria-label="${n} ${d}"
      @click=${()=>mw(e,t,c,n)}
    >
      ${c<0?"\u2191":"\u2193"}
    </button>`;return u`<div class="tools">
    ${s?u`${r(-1,"earlier",t===0)} ${r(1,"later",t===o)}`:f}
    ${i?u`<button
            type="button"
            id=${ha(e,t,"drop")}
            aria-label="Take away ${n}"
            @click=${()=>dw(e,t,n)}
          >
            ×
          </button>`:f}
  </div>`}function je(e,t,n){let o=pw(e),i=At(e.of??"run",e.at);return u`${Gt(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:f} @click=${n}>
      ${t}
    </button>`}var Xm=e=>e.goes_into==="lye",cs=e=>/^(NaOH|KOH)\b/.test(e.name),fw=e=>cs(e)?"down":"nearest",bn=(e,t)=>ze(e,t,fw(t)),ga=e=>ai(bn("metric",e));function ps(e){let t=e.ingredients.map((i,s)=>({one:i,i:s})).filter(({one:i})=>Xm(i)),n=({one:i})=>/^Water/.test(i.name),o=({one:i})=>cs(i);return[...t.filter(n),...t.filter(i=>!n(i)&&!o(i)),...t.filter(o)]}function _a(e){return e.ingredients.map((t,n)=>({one:t,i:n})).filter(({one:t})=>!Xm(t))}var Le=(e,t=1)=>`${gn(e,t)} g`,nf=e=>`${z(e,3)} g`,co=(e,t)=>ai(ze("metric",Pt(e,t),"down")),tt=e=>`${z(e,3)} ml`,Ue=e=>bi(E(a.run,e)),ds=(e,t)=>bi(E(a.formulas[e]?.document,t)),ke="the run";function bi(e){return e==null?"not said":typeof e!="object"?String(e):Object.values(e).map(bi).join(", ")}function of(e){return{formula:"pieces to make = pieces to sell \xF7 (1 \u2212 spoilage), rounded up to whole casts, or to full moulds where they are all filled; batches as few as the fillings and what sets their size allow, and as even as can be",with:[["to sell",String(e.pieces.sell),ke],["spoilage",Ue("/spoilage"),ke],["to make",String(e.pieces.make)],["cavities",String(e.pieces.cavities),"the mould"],["fillings",String(e.pieces.fillings),"to make \xF7 cavities, rounded up"],...e.batches.map(t=>[Et(t.count,"batch","batches"),Zt(e,t)])]}}function sf(e){return{formula:"mass of one pour = volume to the pour line \xD7 density of the batter",with:[["volume to the line",tt(e.volume_each_ml),`level curve of ${e.mould} at ${z(e.depth_mm,2)} mm`],["density",`${e.density_g_per_ml} g/ml`,e.formula],...e.displaced_ml?[["pushed aside by embeds",tt(e.displaced_ml)]]:[],["one pour",Le(e.mass_each_g,3)]],sources:ba()}}function ba(){let e=a.measured?.gauge.measurements?.map(n=>`${n.by} (${tt(n.brimful_ml)} to the brim)`)??[],t=a.measured?.gauge.measurements?.some(n=>n.by==="water");return[...e,...t?["density of water: Kell 1975"]:[]]}function rf(e){return{formula:"one millimetre = area of the free surface at the pour line \xD7 1 mm",with:[["volume of 1 mm",tt(e.ml_per_mm),`slope of the level curve at ${z(e.depth_mm,2)} mm`],["density",`${e.density_g_per_ml} g/ml`,e.formula],["to the brim",tt(e.brimful_ml)]],sources:ba()}}function af(e,t){return{formula:"weigh for a layer = mass in one piece \xD7 pieces of the batch, with its share of the losses",with:[["from",`${z(t.from_mm,1)} mm`],["to",`${z(t.to_mm,1)} mm`],["volume in one piece",tt(t.volume_each_ml)],["mass in one piece",Le(t.mass_each_g)],["all batter to make",Le(e.make_g)]]}}function wa(e,t){let n=E(a.run,`/losses/${e}`),o=Object.entries(n??{}).map(([i,s])=>[i.replaceAll("_"," "),bi(s),ke]);return{formula:"batter to make = in the pieces + losses, after every ingredient is rounded to the scale",with:[["in the pieces",Le(t.in_pieces_g)],...o,["losses together",Le(t.lost_g)],["to make",Le(t.make_g)]]}}function ya(e,t){return e==="pipe"?{formula:"density of the whip = weigh-cup's net weight \xF7 its volume; overrun = plain density \xF7 whipped density \u2212 1",with:[["weigh-cup",Ue("/pipe/whip"),ke],["whipped",`${t.density_g_per_ml} g/ml`],["plain",`${t.plain_density_computed_g_per_ml} g/ml`,"computed, before whipping"]]}:{formula:"density = mass of everything \xF7 sum of the volumes, at the pouring temperature",with:[["density",`${t.density_g_per_ml} g/ml`],["temperature",ds(e,"/pour_temperature"),t.formula],["computed",`${t.plain_density_computed_g_per_ml} g/ml`]],sources:["fats: each fat's published density and slope","lye: Lalibert\xE9 and Cooper 2004","volumes taken as additive, good to 1 to 2 %"]}}var $i=e=>e===0?Dn(e):`${e} %`;function lf(e,t){let{aim:n,effective:o,low:i,high:s,likely_low:r,likely_high:c,doubts:d}=t.superfat_percent;return{formula:"effective superfat = 1 \u2212 alkali weighed \xD7 purity \xF7 alkali that the weighed fats and acids need",with:[["aim",`${n} %`,t.formula],["effective",$i(o),"after rounding fats and alkali to the scales"],["lowest",$i(i),"if every range falls the wrong way"],["highest",$i(s)],...r===void 0||c===void 0?[]:[["likely",`${$i(r)} to ${$i(c)}`,"19 batches in 20, each doubt even over its range and independent of the others"]],...(d??[]).slice(0,3).map(h=>[`doubt: ${h.cause}`,`${Math.round(h.percent_of_variance)} %`,"of the variance"]),["fats",Le(t.fats_g)],["purity",ds(e,"/alkali/0/purity")]],sources:cf(e)}}function uf(e){let t=E(a.formulas[e]?.document,"/fats");return Array.isArray(t)?t.map(n=>{let{fat:o,share:i,saponification_value:s}=n;return{id:String(o),share:String(i),own:s}}):[]}function cf(e){return uf(e).map(({id:t,own:n})=>{let o=a.fats.find(s=>s.id===t),i=o?.saponification_value_mg_koh_per_g;return n!==void 0?`${o?.name??t}: your lot's saponification value ${bi(n)} mg/g`:i?`${o.name}: ${i.low} to ${i.high} mg/g, ${i.source}`:t})}function hw(e,t){return{formula:"alkali = [fats \xD7 saponification value \xD7 M(alkali) \xF7 M(KOH) \xD7 (1 \u2212 superfat) + what acids take] \xF7 purity, rounded down to the fine scale",with:[["fats, as rounded",Le(t.fats_g)],["superfat aimed at",`${t.superfat_percent.aim} %`,t.formula],["purity",ds(e,"/alkali/0/purity"),t.formula],["fine scale reads",Ue("/scales/fine/reads"),ke],...t.ingredients.filter(cs).map(n=>[n.name,ga(n)])],sources:["M(NaOH) 39.997 and M(KOH) 56.105 g/mol, IUPAC atomic weights",...cf(e)]}}function Eu(e,t){return{formula:"water = pure alkali \xD7 (1 \u2212 strength) \xF7 strength",with:[["asked for",ds(e,"/water"),t.formula],["lye strength",`${z(t.lye_strength_percent,1)} %`,"alkali \xF7 (alkali + water)"],["water : alkali",`${z(t.water_to_pure_alkali,2)} : 1`],["water as a share of the fats",`${z(t.water_percent_of_fats,1)} %`],["large scale reads",Ue("/scales/large/reads"),ke]]}}function pf(e,t,n){if(cs(n))return hw(e,t);if(/^Water/.test(n.name))return Eu(e,t);let o=a.fats.find(s=>s.name===n.name),i=uf(e).find(({id:s})=>s===o?.id)?.share;return o&&i?{formula:"weigh = fats for the batter \xD7 share, rounded to the scale",with:[["fats, as rounded",Le(t.fats_g)],["share",i,t.formula],...Du(n),...ef(n)],sources:[`saponification value: ${o.saponification_value_mg_koh_per_g?.source??"your own"}`,`density: ${o.density_g_per_ml?.source??"estimated"}`]}:{formula:"weigh = rate \xD7 what the rate is of, rounded to the scale",with:[["rate",gw(e,n.name),t.formula],["fats",Le(t.fats_g)],["batter",Le(t.make_g)],...Du(n),...ef(n)]}}var Du=e=>e.scale_step_g?[["the scale shows",jd(e.scale_step_g),ke]]:[];function ef(e){return e.set_aside_for_colours_g?[["of it set aside to disperse colours",Le(e.set_aside_for_colours_g)]]:[]}function gw(e,t){for(let n of["additives","fragrances","colours"]){let o=E(a.formulas[e]?.document,`/${n}`);for(let i of Array.isArray(o)?o:[])if(E(i,"/name")===t)return bi(E(i,"/rate"))}return"see the formula"}function df(e,t,n,o){let i=Ue(`${o}/bulk_density`);return{formula:"powder = rate \xD7 what the rate is of: this layer's batter, or the fats in it (layer \xD7 fats \xF7 batter); a rate by the spoon \xD7 bulk density; rounded to the fine scale",with:[["rate",Ue(`${o}/rate`),ke],["this layer's batter",Le(t.g)],["fats in all the base",Le(e.fats_g)],["all the base",Le(e.make_g)],...E(a.run,`${o}/bulk_density`)===void 0?[]:[["bulk density",i,ke]],...Du(n)]}}var Lu=e=>[e.pour,...Zm(e)];function $a(e,t,n){return Lu(e).map((o,i)=>[`${t} for ${e.lye_pot?.shares[i]?.batter??o.formula}`,n(o),"its own weighing, on the lye shelf"])}var Ou=(e,t)=>e.ingredients.filter(n=>t?n.name===t:cs(n)).map(ga).join(" + ")||"none",mf=e=>e.ingredients.filter(t=>/^Water/.test(t.name)).map(ga).join(" + ")||"none";function ff(e,t){return{formula:"alkali in the pot = what each batter's own lye takes, added up, rounded down to the scale",with:[...$a(e,t,n=>Ou(n,t)),["fine scale reads",Ue("/scales/fine/reads"),ke]]}}function hf(e,t){return{formula:"water in the pot = all the alkali \xD7 the least plain water for a gram of alkali that one of the batters takes, before its own scale rounded it; rounded to the scale",with:[...$a(e,"water in the lye",mf),...t.alkalis.map(n=>[n.name,co(n,""),"in the pot"]),...$a(e,"alkali",n=>Ou(n))]}}function gf(e){return{formula:"lye in the pot = alkali + water, to the step the shares are weighed in; strength = pure alkali \xF7 (pure alkali + water)",with:[["water",co(e,"water_")],...e.alkalis.map(t=>[t.name,co(t,"")]),["strength",`${z(e.strength_percent,2)} %`],...e.full_pot_g===null?[]:[["the empty pot",Ue("/lye_pot/pot_tare"),ke],["pot and lye",e.full_pot_g_text===void 0?nf(e.full_pot_g):`${e.full_pot_g_text} g`]]]}}function _f(e,t,n){let o=t.shares[n],i=Lu(e)[n];return{formula:"share = lye in the pot \xD7 this batter's alkali \xF7 all the alkali, rounded down to the scale, as alkali is; what is left stays in the pot; superfat then = 1 \u2212 (1 \u2212 its own) \xD7 (alkali taken \u2212 acids) \xF7 (alkali planned \u2212 acids)",with:[["lye in the pot",co(t,"lye_")],...$a(e,"alkali",s=>Ou(s)),["share",co(o,"lye_")],...t.left_g?[["left in the pot",`${t.left_g_text??z(t.left_g,3)} g`]]:[],["superfat with its own lye",$i(i.superfat_percent.effective)],["superfat out of the pot",$i(o.superfat_percent)]],sources:["acids as KOH: each acid's equivalent, in the formula's additives"]}}function $f(e,t,n){let o=Lu(e)[n];return{formula:"plain water to add = the water of this batter's own lye \u2212 the water that is in its share, both before rounding; under half a gram is left out",with:[["water of its own lye",mf(o),"its own weighing"],["its share of the lye",co(t.shares[n],"lye_")],["water in the pot",co(t,"water_")],["lye in the pot",co(t,"lye_")],["to add",co(t.shares[n],"top_up_")]]}}function bf(e,t,n){let o=e.bottles[t],{part:i,g:s,percent_of_batter:r}=o.parts[n],{pour:c,pipe:d}=e.whole;return{formula:"out of the bottle = what it holds \xD7 this batter \xF7 all batters of the run, rounded down to the scale: one rate in all",with:[["the bottle holds",Ue(`/bottles/${t}/holds`),ke],["base, in the run",Le(c.make_g)],...d?[["topping, in the run",Le(d.make_g)]]:[],[i,nf(s)],["of the batter",`${r} %`]]}}var tf={trials:"by trials = mean of the weighed trials \xF7 density of their whip (its weigh-cup, net \xF7 what it holds)",beads:"by beads = what the moves lay down, added up \xD7 the hand's factor of the tip, if it has one",envelope:"by outline = solid share \xD7 volume of a cone (\u03C0 \xF7 12 \xD7 across\xB2 \xD7 high) or of half an ellipsoid (\u03C0 \xF7 6 \xD7 across\xB2 \xD7 high)"};function wf(e,t){if(t==="beads")return{formula:tf.beads,with:[...(e.visible_by?.moves??[]).map((o,i)=>[`${i+1}. ${Ue(`/pipe/beads/moves/${i}/move`)}`,tt(o.volume_ml)]),["hand's factor",E(a.run,"/pipe/beads/tip/hand/factor")===void 0?"as the tip's file says, else none":Ue("/pipe/beads/tip/hand/factor")]]};let n=t==="trials"?["weighed","weigh_cup/net","weigh_cup/holds"]:["form","diameter","height","solidity"];return{formula:tf[t],with:n.map(o=>[o.replace("weigh_cup/","weigh-cup, "),Ue(`/pipe/${t}/${o}`),ke])}}var _w={dollop:"half an ellipsoid = \u03C0 \xF7 6 \xD7 across\xB2 \xD7 high",ring:"ring = section of the bead \xD7 2 \u03C0 \xD7 radius (Pappus)",spiral:"spiral = section of the bead \xD7 length of its path (arc-length integral)",tail:"tail = section of the bead \xD7 length \xF7 3, a cone",dots:"dots = how many \xD7 section of the bead \xD7 high \xD7 2 \xF7 3",shells:"shells = how many \xD7 section of the bead \xD7 length \xF7 2",bead:"bead = section \xD7 length"};function yf(e,t,n){let o=`/pipe/beads/moves/${e}`,i=Object.entries(E(a.run,o)??{}).filter(([s])=>s!=="move");return{formula:`${_w[Ue(`${o}/move`)]??"section of the bead \xD7 length"}; section = opening of the tip \xD7 swell`,with:[["opening of the tip",n],["swell",Ue("/pipe/beads/swell"),ke],...i.map(([s,r])=>[s.replaceAll("_"," "),bi(r),ke]),...t.length_mm>0?[["path, pressing",`${z(t.length_mm,1)} mm`]]:[],["laid down",tt(t.volume_ml)]]}}function vf(e){let t=Ue("/pipe/fills_headspace");return{formula:"topping = visible shape + share of the headspace \xD7 headspace; its mass = that \xD7 density of the whip",with:[["visible shape",tt(e.visible_each_ml),$w()],["share of the headspace",t,ke],["in the headspace",tt(e.in_headspace_each_ml)],["together",tt(e.volume_each_ml)],["density of the whip",`${e.density_g_per_ml} g/ml`,"weigh-cup"]]}}function $w(){return E(a.run,"/pipe/trials")?"mean of the trials \xF7 their weigh-cup's density":E(a.run,"/pipe/beads")?"the beads of the tip, move by move":"the outline \xD7 its solid share"}function kf(e){return{formula:"this bowl pipes = batter left after losses \xF7 today's density \xF7 topping of one piece, rounded down",with:[["today's weigh-cup",Ue("/pipe/whip_now"),ke],["planned weigh-cup",Ue("/pipe/whip"),ke],["topping of one piece",tt(e.volume_each_ml)],["batter",Le(e.make_g)],["to pipe",String(e.pieces)]]}}function Wu(e,t){let n=o=>Ue(`/perch/${t}/${o}`);return{formula:"melt = (casts \xD7 mass of one + film left in the jug \xD7 tray fills) \xF7 (1 \u2212 melt loss)",with:[E(a.run,`/perch/${t}/per_piece`)===void 0?["in each cast",n("per_cast"),ke]:["on each piece",n("per_piece"),ke],["spares",n("spares"),ke],["casts",String(e.casts)],["mass of one",Le(e.mass_each_g,3),`${tt(e.volume_each_ml)} \xD7 ${n("density")}`],["tray fills",String(e.tray_fills),`${e.cavity_fills} hollows filled`],["film in the jug",n("jug_film"),ke],["melt loss",n("melt_loss"),ke]]}}function Cu(e){return{formula:"bars = rows \xD7 columns that fit after trimming, planing and the kerf of each cut",with:[["rows",String(e.rows)],["columns",String(e.columns)],["bar",Ue("/cut/bar"),ke],["kerf",Ue("/cut/kerf"),ke],["smallest bar",tt(e.bar_ml.least)],["largest bar",tt(e.bar_ml.greatest)]]}}function xf(e){let t=e.piece.cost;return{formula:"cost of a piece = sum of (price \xF7 pack \xD7 used) \xF7 pieces to sell",with:[...t.materials.map(n=>[n.name,n.amount===null?"unpriced":`${n.amount} ${t.currency}`,`${z(n.g,1)} g used`]),["all materials",`${t.total} ${t.currency}`],["to sell",String(e.pieces.sell),ke]]}}function Tf(e){return{formula:"cured = sum over the parts of dry matter + water \xD7 (1 \u2212 share lost in cure)",with:[...(e.piece.parts??[]).map(n=>[n.name,`${Le(n.fresh_g)} fresh`,n.cured_g===null?"":`${Le(n.cured_g)} cured`]),["base, water lost in cure",ds("pour","/water_lost_in_cure"),e.pour.formula],...e.pipe?[["topping, water lost in cure",ds("pipe","/water_lost_in_cure"),e.pipe.formula]]:[],["fresh",Le(e.piece.fresh_g)],["cured",e.piece.cured_g===null?"not known":Le(e.piece.cured_g)]]}}function Sf(e,t){return{formula:"for the whole run = what is weighed for one batch \xD7 how often it is made, added up",with:e.batches.flatMap(n=>t(n).map(([o,i,s])=>[`${Zt(e,n)}, ${Do(n.count)}${o}`,i,s]))}}var fs="/pipe/beads",kt=`${fs}/tip`,Lo={at:`${fs}/moves`,in_order:!0},Bu="\0own",Af={tip:"",swell:"",moves:[]},On=(e,t)=>({name:e,label:t,kind:"length"}),Pf={name:"count",label:"How many",kind:"count"},Rf=On("circle_radius","Radius of their circle"),Iu={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[On("diameter","Across"),On("height","High")]},ring:{words:"Ring",does:"One closed turn.",measures:[On("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},On("start_radius","Radius at the start"),On("end_radius","Radius at the end"),On("rise","Climbs by")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[On("length","Long")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[Pf,Rf,On("height","High")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[Pf,Rf,On("length","Long")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[On("length","Long"),{name:"aside",label:"Beside the middle by",kind:"signed",optional:!0}]}};function Mf(e){return u`${bw()} ${ka()?yw():f}
    ${v({label:"Swell of the bead",at:`${fs}/swell`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${re(Lo).map((t,n)=>Tw(t,n,e))}</div>
    ${Aw()}`}var ka=()=>typeof D("run",kt)=="object";function Df(){let e=D("run",`${fs}/tips_from`);return e===void 0?cm():pm(String(e))}function bw(){let e=n=>n===Bu?rt("run","a tip of your own",kt,{name:"",round:{radius:""}},Lf):_t("run",kt,n),t=Df().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return u`${Ln({label:"Tip",at:kt,answers:[...t,[Bu,"My own, measured"]],unsaid:"Which tip?",take:e,chosen:ka()?Bu:void 0})}
  ${ka()?f:me({name:"tips",pointers:[`${fs}/tips_from`],summary:"Tips of a file of your own",body:()=>v({label:"File of tips",at:`${fs}/tips_from`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the tips that ship are offered."})})}`}var Ef=Ao("run",kt,"own"),Lf=fi(Ef),Fu=[["round","Round"],["star","Star"],["outline","Another outline"]],va={x:"",y:""},ww={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[va,va,va]};function yw(){let e=Fu.map(([n])=>n).find(n=>D("run",`${kt}/${n}`)!==void 0),t=n=>({...Ze("run",kt,Fu.map(([o])=>o)),[n]:ww[n]});return u`<div class="part" id=${Ef} role="group" aria-label="My own tip">
    ${De("run",kt)} ${v({label:"What you call the tip",at:`${kt}/name`})}
    ${Z({question:"Opening of the tip",at:kt,is_told_elsewhere:!0,chosen:e,answers:Fu,puts:t})}
    ${e?kw(e):f}
    ${me({name:"hand",pointers:[ms,`${kt}/note`],summary:"What your hand adds",body:vw})}
  </div>`}var ms=`${kt}/hand`;function vw(){let e=t=>D("run",t)!==void 0;return u`<div class="row">
      ${v({label:"Hand's factor",at:`${ms}/factor`,number:!0,short:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${e(`${ms}/factor`)?v({label:"From so many trials",at:`${ms}/trials`,count:!0,optional:!0,short:!0}):f}
    </div>
    ${e(ms)?u`<button
            type="button"
            @click=${()=>rt("run","hand's factor taken away",ms,void 0,Lf)}
          >
            Leave out the hand's factor
          </button>`:f}
    ${v({label:"Note on the tip",at:`${kt}/note`,optional:!0})}`}function kw(e){if(e==="outline")return xw();let t=(n,o)=>v({label:o,at:`${kt}/${e}/${n}`,unit:"mm",short:!0});return u`<div class="row">
    ${e==="round"?t("radius","Radius of the opening"):u`${v({label:"Points",at:`${kt}/star/points`,count:!0,short:!0})}
          ${t("outer_radius","Radius to the points")} ${t("inner_radius","Radius to the notches")}`}
  </div>`}function xw(){let e={at:`${kt}/outline`};return u`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${re(e).map((t,n)=>u`<div class="row" id=${Ee(e,n)}>
          ${v({label:`Corner ${n+1}, x`,at:`${e.at}/${n}/x`,unit:"mm",short:!0})}
          ${v({label:`Corner ${n+1}, y`,at:`${e.at}/${n}/y`,unit:"mm",short:!0})}
          ${Ve(e,n,`corner ${n+1}`)}
        </div>`)}
    ${je(e,"One more corner",()=>He(e,va,"corner"))}`}function Tw(e,t,n){let o=Iu[String(e.move)],i=`${Lo.at}/${t}`,s=`${t+1}. ${o?.words??String(e.move)}`;return u`<div class="part" id=${Ee(Lo,t)} role="group" aria-label=${s}>
    <div class="part-head">
      <p class="part-title">${s}</p>
      ${Ve(Lo,t,s)}
    </div>
    ${De("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(r=>Sw(i,r))}
      ${v({label:"Starts this high",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${Pw(t,n)}
  </div>`}function Sw(e,{name:t,label:n,kind:o,optional:i}){let s=o==="signed"?"\u221212 mm is to the other side.":void 0,r=o==="length"||o==="signed"?"mm":void 0;return v({label:n,at:`${e}/${t}`,unit:r,hint:s,optional:i,short:!0,count:o==="count",number:o==="number"})}function Pw(e,t){let n=t?.visible_by?.moves??[],o=n[e];if(!o||n.length!==re(Lo).length)return f;let i=o.length_mm>0?`${z(o.length_mm/10,1)} cm of bead`:"";return oe({key:`pipe.move.${e}`,label:"Lays down",note:i,shown:gt(a.units,o.volume_ml),sum:yf(e,o,Rw())})}function Rw(){if(ka())return"as measured, above";let e=Me("run",kt),t=Df().find(n=>n.name===e);return t?.area_mm2?`${e}: ${t.opening}, ${z(t.area_mm2,1)} mm\xB2`:e}function Aw(){let e=o=>({move:o,...Object.fromEntries(Iu[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),t=st("run",Lo.at),n=At("run",Lo.at);return u`${Gt(t,n)}
    <div
      class="choice words"
      role="group"
      id=${t}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${t}-said`:f}
    >
      ${Object.entries(Iu).map(([o,{words:i,does:s}])=>u`<button type="button" @click=${()=>He(Lo,e(o),i)}>
            <b>+ ${i}</b> <small>${s}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}var Mw={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]};function cr(e,t){return Mw[e].map(({name:n,label:o,unit:i,optional:s})=>v({label:t?`${t}: ${o.toLowerCase()}`:o,at:`/losses/${e}/${n}`,unit:i,short:!0,optional:s}))}var Dw=["ice bath","cold water","fridge","room"].map(e=>[e,e==="room"?"the room":e]);function pr(e){let t=`/${e}/warmth`,n=(o,i)=>v({label:i,at:`${t}/${o}`,unit:a.units==="us"?"\xB0F":"\xB0C",optional:!0,short:!0});return me({name:t,pointers:[t],summary:"How warm",body:()=>u` <p class="hint">What you leave blank is left out. The lye shelf tells what follows.</p>
        ${De("run",t)}
        <div class="row">
          ${n("lye_made_at","Room and dry alkali")} ${n("water_at","Water")}
          ${v({label:"Of the water, as ice",at:`${t}/ice_share`,unit:"%",optional:!0,short:!0})}
          ${n("lye_used_at","Lye when it is used")} ${n("fats_at","Fats")}
          ${n("batter_limit","Batter must stay below")}
          ${Ln({label:"The lye cools in",at:`${t}/cooled_in`,answers:Dw,unsaid:"not said",optional:!0})}
        </div>`})}var Of={holds:"",net:""},wn=()=>E(a.run,"/pipe")!==void 0;function Wf(){let e=E(a.run,"/pour/formula")??"";us("run","Topping added",n=>Ye(Ye(n,"/pipe",{formula:e,fills_headspace:"",whip:Of}),"/losses/pipe",{bag:"",bowl_and_whisk:""}),_n("lane-pipe"))}function Ew(e){let t=Object.keys(E(e,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",E(e,"/batch/whippings")!==void 0&&t?"/batch":"/batch/whippings"].reduce((o,i)=>E(o,i)===void 0?o:Ye(o,i,void 0),e)}function Lw(){us("run","Topping taken away",Ew,_n("topping-back"))}function Cf(){let e=a.past.at(-1)?.run;return!e||E(e,"/pipe")===void 0||wn()?f:u`<button type="button" id="topping-back" @click=${ls}>Bring the topping back</button>`}function Nu(){return u`${Iw()} ${pr("pipe")}
    <p class="choice"><button type="button" @click=${Lw}>Take the topping away</button></p>`}function zu(e){return u`<h3>How large is the topping?</h3>
    ${De("run","/pipe")}
    <p class="hint">Weighed trials count before beads, beads before an outline; what you give besides is compared.</p>
    <div class="items">
      ${Yt({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:Of},body:Ow})}
      ${Yt({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",solidity:""},body:Ww})}
    </div>
    ${Yt({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Reckon it from tip and moves",blank:Af,body:()=>Mf(e)})}
    ${e?Bw(e):f}`}function Ow(){let e={at:"/pipe/trials/weighed",least:1};return u`<div class="trials">
      ${re(e).map((t,n)=>u`<div class="row" id=${Ee(e,n)}>
            ${v({label:`Trial ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${Ve(e,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${je(e,"One more trial",()=>He(e,"","trial"))}
    <div class="row">
      ${v({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${v({label:"Cup holds",at:"/pipe/trials/weigh_cup/holds",unit:"ml",short:!0})}
    </div>
    ${De("run","/pipe/trials/weigh_cup")}`}function Ww(){let e="/pipe/envelope",t=D("run",`${e}/form`);return u`${Z({question:"Form of the outline",at:`${e}/form`,chosen:t,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${v({label:"Across",at:`${e}/diameter`,unit:"mm",short:!0})}
      ${v({label:"High",at:`${e}/height`,unit:"mm",short:!0})}
      ${v({label:"Solid share",at:`${e}/solidity`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var Cw={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function Bw(e){let t=e.visible_by;if(!t)return f;let n=["trials","beads","envelope"].map(i=>({way:i,ml:t[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return u`<h4>${n.length<2?"So the visible shape is":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:s},r)=>oe({key:`pipe.by.${i}`,label:Cw[i],note:o(r),shown:gt(a.units,s),sum:wf(e,i)}))}
    ${Fw(e)}`}function Fw(e){let t=e.visible_by?.hand_suggested;if(!t||a.is_old)return f;let n=z(t.factor,2),o="/pipe/beads/tip/hand",i=typeof D("run","/pipe/beads/tip")=="object",s=i&&E(a.run,`${o}/factor`)!==t.factor,r=()=>rt("run","hand's factor kept",o,{factor:t.factor,trials:t.trials});return u`<p>
      Your hand lays down ${n} times the computed beads (${t.trials}
      ${t.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${s?u`<button type="button" @click=${r}>Keep ${n} for my tip</button>`:f}`}function Hu(e){return u`<h3>The whip planned for</h3>
    <div class="row">
      ${v({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g"})}
      ${v({label:"Cup holds",at:"/pipe/whip/holds",unit:"ml",short:!0})}
    </div>
    ${De("run","/pipe/whip")}
    ${v({label:"One bag holds",at:"/pipe/bag_holds",unit:"ml",optional:!0,hint:e?.loads?`${e.loads} bag loads`:void 0})}`}function Bf(){return u`<h3>What is lost of it</h3>
    <div class="row">${cr("pipe")}</div>`}function Iw(){let e=(n,o,i,s=!1)=>v({label:n,at:o,unit:i,optional:s,short:!0});return me({name:"vessels",pointers:["/pipe/bowl","/pipe/pace","/pipe/lye_spoon"],summary:"Bowl, pace, lye by the spoon",body:()=>u` <div class="items">
        ${Yt({at:"/pipe/bowl",name:"the bowl",title:"The bowl",add:"Say what the bowl holds",blank:{holds:""},body:()=>u`<div class="row">
              ${e("Bowl holds","/pipe/bowl/holds","l")}
              ${e("Least the whisk catches, unwhipped","/pipe/bowl/whisk_catches","ml",!0)}
            </div>`})}
        ${Yt({at:"/pipe/pace",name:"the pace",title:"The pace",add:"Say how fast you pipe",blank:{stays_open:"",each:""},body:()=>u`<div class="row">
              ${e("Can be piped for","/pipe/pace/stays_open","min")}
              ${e("To pipe one","/pipe/pace/each","s")}
              ${e("To change the bag","/pipe/pace/bag_change","s",!0)}
            </div>`})}
        ${Yt({at:"/pipe/lye_spoon",name:"the lye spoon",title:"Lye by the spoon",add:"Lye is whipped in by the spoon",blank:{holds:"",each:""},body:()=>u`<div class="row">
              ${e("Spoon holds","/pipe/lye_spoon/holds","ml")}
              ${e("From one spoonful to the next","/pipe/lye_spoon/each","s")}
            </div>`})}
      </div>`})}var Xt="/batch",hs="/pots",dr=e=>`${e}/moulds_owned`;function ju(){let e=[Xt,hs,dr("/pour")];return me({name:"batches",pointers:e,summary:`Batches, pots, moulds owned${Nw()}`,body:()=>u` <p class="hint">What you leave blank sets no limit.</p>
        ${De("run",Xt)} ${De("run",hs)}
        <div class="row">
          ${v({label:"Moulds like this owned",at:dr("/pour"),count:!0,optional:!0,short:!0,hint:"Else as many as the mould's own file says."})}
          ${v({label:"Pot for the base holds",at:`${hs}/holds`,unit:"l",optional:!0,takes_part:!0,short:!0,hint:"To the brim; filled to two thirds."})}
          ${v({label:"Lye jug holds",at:`${hs}/lye_jug`,unit:"l",optional:!0,takes_part:!0,short:!0,hint:"To the brim; filled to half."})}
          ${zw()} ${jw()}
        </div>
        ${Z({question:"Cavities at each filling",at:Xt,asked_at:`${Xt}/fill`,chosen:D("run",`${Xt}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:t=>Ff("fill",t==="full"?t:void 0)})}`})}function Nw(){let[e,t,n,o,i]=[`${Xt}/pieces`,`${Xt}/casts`,`${hs}/holds`,`${hs}/lye_jug`,dr("/pour")].map(r=>Me("run",r)),s=[e&&`at most ${e} in a batch`,t&&`at most ${t} casts in a batch`,n&&`pot of ${n}`,o&&`lye jug of ${o}`,i&&Et(Number(i),"mould")].filter(Boolean);return s.length?`: ${s.join(", ")}`:""}function Ff(e,t){let n=Ze("run",Xt,[e]),o=t===void 0?n:{...n,[e]:t};return Object.keys(o).length?o:void 0}function zw(){let e=D("run",`${Xt}/casts`)!==void 0,t=(n,o)=>v({label:o,at:`${Xt}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0});return Ft()?D("run",`${Xt}/pieces`)!==void 0?u`${t("pieces","Most bars in a batch")}
        <button type="button" @click=${Hw}>Count loaves instead</button>`:t("casts","Most loaves in a batch"):e?t("casts","Most casts in a batch"):t("pieces","Most pieces in a batch")}function Hw(){rt("run","Counted in loaves",Xt,Ff("pieces",void 0))}function jw(){let e=`${Xt}/whippings`;return!wn()&&D("run",e)===void 0?f:v({label:"Whippings a batch",at:e,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var Uw=500,Uu=()=>E(a.run,"/cut")===void 0&&(a.plan?.pour.brimful_ml??0)>=Uw;function Jw(){rt("run","Cut it into bars","/cut",{bar:{},kerf:""},fi(st("run","/cut/bar")))}function qw(){rt("run","Left whole","/cut",void 0,_n("cut-into-bars"))}function Ju(){return Uu()?u`<div class="choice">
    <button type="button" id="cut-into-bars" @click=${Jw}>Cut it into bars</button>
  </div>`:f}var Vw={loaf:{thickness:""},slab:{length:"",width:""}};function Kw(){let e=D("run","/cut/bar")??{};return"thickness"in e?"loaf":"length"in e||"width"in e?"slab":void 0}var Gw={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function xa(){let e=Kw(),t=(o,i)=>v({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=Me("run","/cut/along");return u` ${Z({question:"What is cut?",at:"/cut/bar",chosen:e,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>Vw[o]})}
    <div class="row">
      ${e==="loaf"?v({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):f}
      ${e==="slab"?["length","width"].map(o=>v({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):f}
      ${v({label:"Kerf of each cut",at:"/cut/kerf",unit:"mm",short:!0})}
      ${t("Off each end","end_trim")} ${t("Off each side","side_trim")}
      ${t("Planed off the top","top_planing")}
      ${t(e==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf is what each cut wastes: 0 mm for a wire.</p>
    ${e?Z({question:e==="loaf"?"Slice follows slice":"The bars' length lies",at:"/cut/along",chosen:n,answers:Gw[e],puts:o=>o||void 0}):f}
    <button type="button" @click=${qw}>Leave it whole</button>`}var Ta="",Sa=!1,qu=0,Vu=localStorage.getItem("paper")==="Letter"?"Letter":"A4";function If(e,t){let n=document.createElement("a");n.href=e,t(n),n.click()}async function Nf(e){if(!Sa){Sa=!0,Ta="Making it ...",T();try{await Yw(),Ta=await e()}catch(t){Ta=t instanceof Error?t.message:String(t)}Sa=!1,T()}}async function Yw(){await as();let e=lo("run");if(e)throw new Error(`${e.file} changed underneath: say first which text is to stay.`)}var Oo=(e,t)=>()=>Nf(async()=>{let n=URL.createObjectURL(await Zi(t));return If(n,o=>o.download=e),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${e} is in your downloads.`}),Zw=e=>()=>Nf(async()=>{let{address:t}=await jt("/api/document",{...e,open:!0});return If(t,n=>Object.assign(n,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page."}),Qw=e=>{Vu=e,localStorage.setItem("paper",e),T()},Xw=e=>e.batches.flatMap(t=>t.numbers.map(n=>({number:n,one:t}))).sort((t,n)=>t.number-n.number),zf=e=>vt(e)&&qu<=e.pieces.batches?qu:0;function ey(e){if(!vt(e))return f;let t=zf(e),n=i=>{qu=Number(i.target.value),T()},o=(i,s)=>u`<option value=${i} .selected=${St(i===t)}>${s}</option>`;return u`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${Xw(e).map(({number:i,one:s})=>o(i,`batch ${i} of ${e.pieces.batches}: ${Zt(e,s)}`))}
      </select>
    </div>
  </div>`}function Hf(e){let t=a.file.split("/").at(-1).replace(/(\.run)?\.json$/,""),n={file:a.file,run:a.run},o=a.measured?.mould,i={file:o,"below-brim":`${e.pour.below_brim_mm} mm`},s=zf(e),r={plan:n,paper:Vu,...s?{batch:String(s)}:{}},c=(d,h,b="")=>u`<button type="button" class=${b} ?disabled=${Sa} @click=${h}>${d}</button>`;return u`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">To print and to keep</h2>
    <h3>The sheet for the bench</h3>
    ${Dt("Paper",Vu,[["A4","A4"],["Letter","Letter"]],Qw)}
    ${ey(e)}
    <div class="choice">
      ${c("Bench sheet, to print",Zw({kind:"sheet",...r}),"strong")}
      ${c("Bench sheet, PDF",Oo(`${t}${s?` batch ${s}`:""}.pdf`,{kind:"sheet-pdf",...r}))}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${e.label?c("Label draft",Oo(`${t} label.txt`,{kind:"label",plan:n})):""}
      ${c("Drawing of the pour, true size",Oo(`${t} pour.svg`,{kind:"picture",plan:n}))}
      ${c("Drawing of the piece",Oo(`${t}.svg`,{kind:"piece",plan:n}))}
      ${c("Whole piece, GLB",Oo(`${t}.glb`,{kind:"glb",plan:n}))}
      ${c("Whole piece, STL",Oo(`${t}.stl`,{kind:"stl",plan:n}))}
      ${o?u`${c("Filled cavity, GLB",Oo(`${t} cavity.glb`,{kind:"glb",gauge:i}))}
            ${c("Cavity, STL",Oo(`${t} cavity.stl`,{kind:"stl",gauge:{file:o}}))}`:""}
    </div>
    <p role="status">
      ${Ta||`The drawing has the pour line ${se(Rt(a.units,e.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var Wn=e=>e===null?"not known":`${z(e,2)} mm`,en=(e,t)=>{let n=Ue(t);return n==="not said"?[]:[[e,n,ke]]};function jf(e,t){let n=t.heat;return{formula:"hottest lye: where its enthalpy is that of the cold water and the dry alkali together, all at once in a pot that takes none of it; cooling time = mass \xD7 heat capacity \xF7 (U \xD7 area) \xD7 ln((from \u2212 around) \xF7 (to \u2212 around))",with:[["strength",`${z(t.lye_strength_percent,1)} %`],["water at",`${n.water_at_c} \xB0C`],...en("lye made at",`/${e}/warmth/lye_made_at`),...en("lye used at",`/${e}/warmth/lye_used_at`),...en("fats at",`/${e}/warmth/fats_at`),...en("cooled in",`/${e}/warmth/cooled_in`)],sources:["NaOH: enthalpy and vapour pressure by Olsson, Jernqvist and Aly, Int. J. Thermophysics 18 (1997)","KOH: heat of solution at infinite dilution (CRC Handbook), which is too warm, never too cool","U: 50 to 300 W/(m\xB2 K) in water, 5 to 20 in air, by published coefficients of free convection; Newton's law of cooling"]}}function Uf(e){return{formula:"pieces = batter left after losses \xF7 (net weight \xF7 cup) \xF7 topping of one piece, rounded down; overrun = plain density \xF7 whipped density \u2212 1",with:[["batter",Le(e.make_g)],["losses together",Le(e.lost_g)],["cup holds",Ue("/pipe/whip/holds"),ke],["topping of one piece",tt(e.volume_each_ml)],["plain density",`${e.plain_density_computed_g_per_ml} g/ml`,"computed, before whipping"],["to pipe",String(e.pieces)]]}}function Jf(e){return{formula:"piping = pieces \xD7 one piece + bag changes; least = what the whisk catches \xF7 plain batter of one piece; most = share of the bowl \xF7 whipped batter of one piece, and open time \xF7 one piece; spoonfuls = lye \xF7 spoon",with:[["pieces",String(e.pieces)],...en("one piece takes","/pipe/pace/each"),...en("a bag change","/pipe/pace/bag_change"),...e.loads?[["bag loads",String(e.loads),`bag of ${Ue("/pipe/bag_holds")}`]]:[],...en("stays open","/pipe/pace/stays_open"),...en("bowl holds","/pipe/bowl/holds"),...en("whisk catches","/pipe/bowl/whisk_catches"),...en("spoon holds","/pipe/lye_spoon/holds"),...en("from one spoonful to the next","/pipe/lye_spoon/each")],sources:["how full a bowl may be whipped: common practice, no source"]}}function qf({on_top:e,buried:t},n){let o=`/perch/${n}`;return{formula:e?"it stands proud by its height less what is pressed in; it rests on a circle as large as its section at that depth":"cover = least distance between the surfaces of the embed and of wall, floor, pour line or next embed; pushed aside = its volume below the line",with:e?[...en("pressed in",`${o}/on_top/sinks`),["of it below the top",tt(e.sunk_ml)],["rests on a circle of",Wn(e.contact_mm)],["flat of the peak",Wn(e.peak_flat_mm),"by the topping's shape"]]:[...en("cover wanted",`${o}/buried/cover`),...(t?.embeds??[]).map(({middle_mm:i,floor_cover_mm:s,wall_cover_mm:r,apart_mm:c},d)=>[`${d+1}. middle at ${i.map(h=>z(h,1)).join(", ")} mm`,`floor ${Wn(s)}, wall ${Wn(r)}`,c===null?"":`next one ${Wn(c)}`])],sources:["measured between the facets of mould and embed as they are drawn"]}}function Vf(){let{gauge:e}=a.measured,t=e.pockets[0];return{formula:"to the brim = area of the level section, summed from floor to brim; of a mesh by the signed tetrahedra of its facets (divergence theorem); with water = net weight \xF7 density of water",with:[["one cavity",tt(t.brimful_ml)],["floor",Wn(t.floor_mm)],["brim",Wn(t.brim_mm)],["opening",`${z(t.opening_cm2,2)} cm\xB2`],["cavities",String(e.pockets.length)],["all of them",tt(e.total_ml)]],sources:ba()}}function Kf(e){let t=e.piece.size;return{formula:"the box that the model of base, topping and decoration just fits, standing as it was poured",with:[["wide",Wn(t.width_mm)],["deep",Wn(t.depth_mm)],["high",Wn(t.height_mm)],["of it base to the pour line",Wn(e.pour.depth_mm)]]}}var ty=/put "confirmed": ("(?:[^"\\]|\\.)*")/;function ny(e,t,n){let o=ty.exec(n)?.[1];if(o===void 0)return;let i=JSON.parse(o),s=t==="/"?e:E(e,t),c=s!==null&&typeof s=="object"&&!Array.isArray(s)&&!/ beside "/.test(n)?t.replace(/^\/$/,""):t.slice(0,t.lastIndexOf("/")),d=E(e,`${c}/confirmed`),h=Array.isArray(d)?d:typeof d=="string"?[d]:[];return{pointer:`${c}/confirmed`,value:h.length?[...h,i]:i}}function Pa(e,t,n,o){let i=ny(e,t,n);return i?u`<button type="button" @click=${()=>o(i.pointer,i.value)}>It is really so: keep it</button>`:f}function Wo(e,t,n){let o=oy(e,t);return me({of:e,name:`${t} label`,pointers:["inci","allergens","document"].map(i=>`${t}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>u`${sy(e,`${t}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${Gf(e,`${t}/allergens`,"Allergen","Add an allergen",(i,s)=>ry(e,i,s))}
        ${v({label:"Supplier's document, with its date",of:e,at:`${t}/document`,optional:!0})}`})}function oy(e,t){let n=To(e,`${t}/allergens`).length;return[D(e,`${t}/inci`)===void 0?"":"INCI said",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var Ku={name:"",share:""},iy={unsaid:void 0,one:"",many:[Ku]};function sy(e,t,n){let o=D(e,t),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",s=r=>r==="many"&&o?[{...Ku,name:o}]:iy[r];return u`${Z({of:e,question:`INCI of ${n}`,at:t,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not said"],["one","One name"],["many","A composition"]],puts:s})}
  ${i==="one"?v({label:"INCI name",of:e,at:t}):f}
  ${i==="many"?u`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${Gf(e,t,"INCI name","One more INCI name")}`:f}`}function ry(e,t,n){return Z({of:e,question:`Allergen ${n+1}: on the EU's list?`,at:`${t}/listed`,chosen:D(e,`${t}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function Gf(e,t,n,o,i){let s={of:e,at:t};return u`${re(s).map((r,c)=>u`<div class="row named" id=${Ee(s,c)}>
        ${v({label:`${n} ${c+1}`,of:e,at:`${t}/${c}/name`})}
        ${v({label:`Share ${c+1}`,of:e,at:`${t}/${c}/share`,unit:"%",short:!0})}
        ${i?.(`${t}/${c}`,c)??f} ${Ve(s,c,String(r.name||`${n} ${c+1}`))}
      </div>`)}
  ${je(s,o,()=>He(s,Ku,n))}`}var ay={piece:{per_piece:""},surface:{on_surface:"",covered:"",lands:""}},Cn={at:"/dust"},Gu=e=>Me("run",`/dust/${e}/name`).trim()||`Dust ${e+1}`;function Yf(){He(Cn,{name:""},"Dust")}function ly(e){return D("run",`${e}/per_piece`)!==void 0?"piece":D("run",`${e}/on_surface`)===void 0?void 0:"surface"}function Zf(e){let t=`/dust/${e}`,n=ly(t),o=Gu(e),i=s=>({...Ze("run",t,["per_piece","on_surface","covered","lands"]),...ay[s]});return u` ${v({label:"Which powder",at:`${t}/name`})}
  ${Z({question:"How much of it?",at:t,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?v({label:`${o}, for one piece`,at:`${t}/per_piece`,unit:"g",hint:"What misses it included."}):f}
  ${n==="surface"?u`<div class="row">
            ${v({label:"Lies where it covers",at:`${t}/on_surface`,unit:"mg/cm2",short:!0})}
            ${v({label:"Covered, of the surface",at:`${t}/covered`,unit:"%",short:!0})}
            ${v({label:"Lands, of what is dusted",at:`${t}/lands`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all that the air sees of the piece in its mould: topping, decoration, level batter.
          </p>`:f}
  ${Wo("run",t,o)}`}var uy={"by number":{},on_top:{on_top:{sinks:""}},buried:{buried:{cover:""}}};function cy(e){return["on_top","buried"].find(t=>D("run",`${e}/${t}`)!==void 0)??"by number"}function Qf(e,t){let n=cy(e),o=i=>({...Ze("run",e,["on_top","buried"]),...uy[i]});return fa(e)==="drizzle"?u`<p class="aside">A drizzle lies on the surface it covers.</p>`:me({name:`${e} where`,pointers:[`${e}/on_top`,`${e}/buried`],summary:"Where it goes",body:()=>u` ${Z({question:"Where does it go?",at:e,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Only counted"]],puts:o})}
      ${n==="on_top"?py(`${e}/on_top`):n==="buried"?my(e,t):u`<p class="aside">It is counted and weighed; how it sits is not looked at.</p>`}`})}function py(e){return u`<div class="row">
      ${v({label:"Pressed into the top",at:`${e}/sinks`,unit:"mm"})}
      ${v({label:"Flat of the peak, across",at:`${e}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${Xf(e,"It is turned")}`}function Xf(e,t){let n=o=>v({label:`About ${o}`,at:`${e}/turn/${o}`,unit:"deg",optional:!0,short:!0});return me({name:`${e} turn`,pointers:[`${e}/turn`],summary:t,body:()=>u` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var dy=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function my(e,t){let n=`${e}/buried`,o=D("run",`${n}/places`)!==void 0?"said":D("run",`${n}/find`),i=D("run",`${n}/set`);return u`${De("run",n)}
  ${v({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between it and wall, floor, pour line and the next one."})}
  ${Z({question:"When is it set in?",at:`${n}/set`,chosen:i,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:s=>s})}
  ${Z({question:"Where in the pour?",at:e,asked_at:`${n}/find`,chosen:o,answers:dy,puts:s=>fy(e,s)})}
  ${o==="said"?gy(e,t):f}`}var eh={x:"",y:"",height:""};function fy(e,t){let n=Ze("run",`${e}/buried`,["find","places"]);if(t!=="said")return{...D("run",e),buried:{...n,find:t}};let o=Number(D("run",`${e}/${lr(e)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>eh);return{...Ze("run",e,["per_piece","per_cast"]),[th(e)]:i.length,buried:{...n,places:i}}}var th=e=>Ft()?"per_cast":lr(e)??"per_piece";function hy(e){let t=(n,o)=>{let i=["per_piece","per_cast"].reduce((s,r)=>Ye(s,`${e}/${r}`,void 0),n);return Ye(i,`${e}/${th(e)}`,o)};return{at:`${e}/buried/places`,least:1,and:t}}function gy(e,t){let n=hy(e),o=re(n);return u`<p class="hint">
      From the cavity's middle to its own: x to the right in the drawing, y away from you, either below zero for the
      other side. The height is that of its lowest point above the cavity's.
    </p>
    ${o.map((i,s)=>{let r=`${n.at}/${s}`,c=d=>v({label:`Place ${s+1}: ${d}`,at:`${r}/${d}`,unit:"mm",short:!0});return u`<div class="part" id=${Ee(n,s)} role="group" aria-label="Place ${s+1} of ${gi(t)}">
        ${De("run",r)}
        <div class="row">
          ${c("x")} ${c("y")} ${c("height")} ${Ve(n,s,`place ${s+1} of ${gi(t)}`)}
        </div>
        ${Xf(r,`Place ${s+1} is turned`)}
      </div>`})}
    ${je(n,"Add a place",()=>He(n,eh,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var nh=e=>`${e} made`;function _y(){let e=ma(re($n).length),t=Ft()?{}:{per_piece:""};for(let n of[nh(e),`${e} where`])Vm("run",n);He($n,{name:"",material:"",...t,density:"",spares:"",melt_loss:"",jug_film:""},"Decoration")}function Ra(){let[e,t]=[re($n).length>0,re(Cn).length>0];return u`<div class="choice">
    ${je($n,e?"Add another decoration":"Add a decoration",_y)}
    ${je(Cn,t?"Add another dust":"Add a dust",Yf)}
  </div>`}function oh(e){let t=ma(e);return u` ${De("run",t)} ${yy(t)}
    <div class="row">
      ${$y(t)} ${v({label:"Spares",at:`${t}/spares`,unit:"%",short:!0})}
      ${v({label:"Melt lost",at:`${t}/melt_loss`,unit:"%",short:!0})}
      ${v({label:"Film in the jug",at:`${t}/jug_film`,unit:"g",short:!0})}
      ${v({label:"Density when set",at:`${t}/density`,unit:"g/ml",short:!0})}
    </div>
    ${Qf(t,e)} ${Wo("run",t,gi(e))}`}function $y(e){let t=lr(e),n=To("run",`${e}/buried/places`).length;if(n&&n===D("run",`${e}/${t}`)&&!(Ft()&&t==="per_piece"))return u``;let o=t==="per_cast"?Ft()?"In each loaf":"In each cast":Ft()?"On each bar":"On each piece",i=s=>({...Ze("run",e,["per_piece","per_cast"]),[s]:t?D("run",`${e}/${t}`):""});return u`${Ft()?Z({question:"Counted by",at:e,is_told_elsewhere:!0,chosen:t,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):f}
  ${t?v({label:o,at:`${e}/${t}`,count:!0,short:!0}):f}`}var by={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}}};function wy(e,t){let n=["mould","moulds_owned","fill","made_of","rod","drizzle",...t==="drizzle"?["on_top","buried"]:[]];return{...Ze("run",e,n),...by[t]}}function yy(e){let t=fa(e),n=["name","material","mould","moulds_owned","fill","made_of","rod","drizzle","each_fill"].map(o=>`${e}/${o}`);return me({name:nh(e),pointers:n,summary:"What it is and how it is made",is_needed:!t,body:()=>u` <div class="row">
          ${v({label:"What it is called",at:`${e}/name`})}
          ${v({label:"What is melted for it",at:`${e}/material`})}
        </div>
        <p class="hint">The price goes by what is melted.</p>
        ${Z({question:"How is it made?",at:e,is_told_elsewhere:!0,chosen:t,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"]],puts:o=>wy(e,o)})}
        ${t?vy[t](e):f}
        ${v({label:"To fill all trays once, setting included",at:`${e}/each_fill`,unit:"min",optional:!0})}`})}var vy={mould:ky,rod:e=>u`<div class="row">
      ${v({label:"Rod, across",at:`${e}/rod/diameter`,unit:"mm",short:!0})}
      ${v({label:"Rod, long",at:`${e}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:e=>u`<div class="row">
      ${v({label:"Area covered",at:`${e}/drizzle/area`,unit:"cm2",short:!0})}
      ${v({label:"Thick",at:`${e}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`};function ky(e){let t=D("run",`${e}/fill/depth`)===void 0?"below_brim":"depth";return u`${uo("Cast in",`${e}/mould`,a.files?.moulds)}
  ${v({label:"Trays like this owned",at:dr(e),count:!0,optional:!0,hint:"Else as many as the mould's own file says."})}
  ${Z({question:"Filled to a line",at:`${e}/fill`,chosen:t,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${t==="below_brim"?v({label:"Filled to, below the brim",at:`${e}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):v({label:"Filled to, above the floor",at:`${e}/fill/depth`,unit:"mm"})}
  ${Z({question:"What makes one?",at:`${e}/made_of`,chosen:D("run",`${e}/made_of`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}var sh=e=>e.map(t=>`M${t.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function rh(e,t){let n=t.brim-t.floor,o=e.pour.poured_to_mm??e.pour.depth_mm,i=e.perch?.find(d=>!d.buried&&d.cavity_fills>0),s=i?uh(i):0,r=i?i.on_top?.stands_proud_mm??1.9*s:0,c=e.pipe?xy(e,t,n,r):0;return{brim:n,line:o,topping:c,ball:s,proud:r,top:Math.max(n,(e.pipe?n:o)+c+r)}}function xy(e,t,n,o){let i=ts(E(a.run,"/pipe/envelope/height"));if(i!==void 0)return i;let s=(e.piece.size?.height_mm??0)-n-o;if(s>1)return s;let[r,c]=Yl(t,t.brim-.01),d=Math.PI/4*(c-r)**2;return 1500*e.pipe.visible_each_ml/d}function ih(e,t){let[n,o]=Yl(e,e.brim-.01),i=(n+o)/2,s=3,r=b=>(o-n)/2*Math.sqrt(1-(b/(s+.3))**2),c=b=>-(t.brim+t.topping*b/s),d=(b,$,y)=>{let S=i+y*(Math.max(r(b),r($))+(o-n)*.035);return`C${S} ${c(b)} ${S} ${c($)} ${i+y*r($)*($?.94:1)} ${c($)}`},h=`M${n} ${c(0)}`;for(let b=0;b<s;++b)h+=d(b,b+1,-1);h+=`L${i+r(s)*.94} ${c(s)}`;for(let b=s;b>0;--b)h+=d(b,b-1,1);return`${h}Z`}var mr=(e,t)=>e===t?`shaded ${t}`:"plain";function wi(e,t,n=f){let o=a.measured?.outline;if(!o)return u`<p class="drawing hint">${a.measuring_failed??"Reading the mould ..."}</p>`;let i=rh(t,o),s=o.right-o.left,r=Math.max(6,s*.1),c={x:o.left-r,y:-i.top-r,w:s+2*r,h:i.top+2*r};return u`<div class="drawing">
      <svg viewBox="${c.x} ${c.y} ${c.w} ${c.h}" role="img" aria-label=${Ly(e,t)}>
        ${Ty(e)} ${Sy(e,t,o,i)} ${Ry(e,t,o,i)} ${Ay()}
        ${My(e,t,o,i)} ${Ey(e,t,o,i)}
        ${Xe`<line class="pour-line" x1=${c.x+1} x2=${c.x+c.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${c.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${c.x+c.w-1} y1=${-i.brim} y2=${-i.brim} />`}
      </svg>
      ${n}
    </div>
    ${e==="perch"&&Yu(t)?u`<p class="hint">${Yu(t)}</p>`:f}`}function ah(e,t){let n=a.measured.outline,o=rh(e,n),i=n.right-n.left,s=Math.max(6,i*.1),r=o.top+2*s;return{share:(o.top+s-t)/r,per_mm:1/r,w:i+2*s,h:r}}function Ty(e){return Xe`<defs>
    <pattern id="hatch-${e}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${e}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${e}"><path clip-rule="evenodd" d=${sh(lh())} /></clipPath>
  </defs>`}function lh(){let e=a.measured.outline;return e.loops.map(t=>t.map(([n,o])=>[n,o-e.floor]))}function Sy(e,t,n,o){let i=e==="cut"?"pour":e,s=t.pour.layers??[],r=(s.length?s.map(c=>Py(c,n)):[[o.line,o.line]]).map(([c,d])=>`M${n.left} 0V${-c}L${n.right} ${-d}V0Z`);return Xe`<g clip-path="url(#cavity-${e})">${r.map((c,d)=>Xe`<path class="whole" d=${c} /><path class="${mr(i,"pour")} band${d%3}" d=${c} />${i==="pour"&&d%2===0?Xe`<path fill="url(#hatch-${e})" d=${c} />`:f}`).reverse()}</g>`}function Py(e,t){let{surface:n,to_mm:o}=e;if(!n)return[o,o];let i=s=>n.over_origin_mm+n.rise_x*s+n.rise_y*t.cut_y;return[i(t.left),i(t.right)]}function Ry(e,t,n,o){if(!t.pipe||o.line>=o.brim)return f;let i=Math.min(1,(parseFloat(String(E(a.run,"/pipe/fills_headspace")).replace(",","."))||0)/100),s=(n.right-n.left)*i,r=(n.left+n.right)/2;return Xe`<g clip-path="url(#cavity-${e})"><rect class=${mr(e,"pipe")} x=${r-s/2} width=${s}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function Ay(){return Xe`<path class="wall" fill-rule="evenodd" d=${sh(lh())} />`}function My(e,t,n,o){let i=(n.left+n.right)/2,s=t.pipe?o.brim:o.line,r=t.perch?.flatMap((c,d)=>(c.buried?.embeds??[]).map(h=>({embed:h,one:c,i:d})))??[];return Xe`
    ${t.pipe?Xe`<path class=${mr(e,"pipe")} d=${ih(n,o)} />${e==="pipe"?Xe`<path fill="url(#dots-pipe)" d=${ih(n,o)} />`:f}`:f}
    ${o.ball?Xe`<circle class=${mr(e,"perch")} cx=${i} cy=${-(s+o.topping+o.proud-o.ball)} r=${o.ball} />`:f}
    ${r.map(({embed:c,one:d,i:h})=>Dy(mr(e,"perch"),i,c,d,h))}`}function Dy(e,t,n,o,i){let[s,r]=[t+n.middle_mm[0],n.middle_mm[2]],c=ts(E(a.run,`/perch/${i}/rod/diameter`)),d=ts(E(a.run,`/perch/${i}/rod/length`));if(!c||!d)return Xe`<circle class=${e} cx=${s} cy=${-r} r=${uh(o)} />`;let[h,b]=[n.turn[0][0],n.turn[2][0]],$=Math.min(1,Math.hypot(h,b)),y=c/2*Math.sqrt(1-$*$),S=d*$+2*y,P=-180/Math.PI*Math.atan2(b,h);return Xe`<rect class=${e} x=${-S/2} y=${-c/2} width=${S} height=${c} rx=${y} ry=${y?c/2:0}
    transform="translate(${s} ${-r}) rotate(${P})" />`}var uh=e=>Math.cbrt(3e3*e.volume_each_ml/(4*Math.PI));function Yu(e){let t=(e.perch??[]).filter((n,o)=>E(a.run,`/perch/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return t.length?`Drawn as a ball of its volume, whatever its shape: ${t.join(", ")}.`:""}function Ey(e,t,n,o){if(e!=="cut"||!t.cut)return f;let i=Math.max(t.cut.rows,t.cut.columns);return Xe`${Array.from({length:i-1},(s,r)=>{let c=n.left+(n.right-n.left)*(r+1)/i;return Xe`<line class="knife" x1=${c} x2=${c} y1=${-o.line} y2="0" />`})}`}function Ly(e,t){let n=se(Rt(a.units,t.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",perch:"the decoration",cut:"the loaf with its cuts"}[e]} is shaded. Pour line ${n} below the brim. ${Yu(t)}`.trim()}var gs=()=>re($n).length+re(Cn).length>0;function ch(){return u`<section class="lane unused" aria-label="Perch">
    <h2>Perch</h2>
    <p>Nothing is set on or in it${Uu()?", and it is left whole":""}.</p>
    ${Ra()} ${Ju()}
  </section>`}function ph(e,t,n,o){return e?.length===t.length?e[o]:e?.find(i=>i.name===n)}function dh(e){let t=re($n).flatMap((n,o)=>{let i=Oy(e,o);return i?[{one:i,i:o}]:[]});return u`<div class="side">${t.map(({one:n})=>Wy(e,n))} ${wi("perch",e)}</div>
    <div class="weights">
      ${t.map(({one:n,i:o})=>Cy(e,n,o))}
      ${e.dust?.length&&re(Cn).length?u`${vt(e.whole)?Eo(e):f}
              <h3>Weigh for dusting</h3>`:f}
      ${re(Cn).map((n,o)=>Fy(e,o))}
    </div>
    ${Zu()}`}var Oy=(e,t)=>ph(e.perch,re($n),Me("run",`/perch/${t}/name`),t);function Zu(){let e=(t,n,o,i)=>u`<section class="questions" id=${Ee(t,n)} aria-labelledby="${Ee(t,n)}-title">
      <div class="part-head">
        <h3 id="${Ee(t,n)}-title">${o}</h3>
        ${Ve(t,n,o)}
      </div>
      ${i}
    </section>`;return u`<div class="all-questions">
    ${re($n).map((t,n)=>e($n,n,gi(n),oh(n)))}
    ${re(Cn).map((t,n)=>e(Cn,n,Gu(n),Zf(n)))} ${Ra()} ${Ju()}
  </div>`}function Wy(e,t){let n=t.tray_fills>0?`, in ${t.tray_fills} tray ${t.tray_fills===1?"fill":"fills"}`:"";return u`<p class="order ${a.is_old?"old":""}">
    Cast <b>${t.casts}</b> of ${t.name} ahead${n}${vt(e.whole)?", for the whole run":""}.
  </p>`}function Cy(e,t,n){return u`<h3>
      Weigh for ${t.name} ${vt(e.whole)?u`<small>for the whole run</small>`:f}
    </h3>
    ${oe({key:`perch.${n}.make`,label:`Melt of ${t.material}`,shown:ze(a.units,Pt(t,"make_")),size:"weigh",sum:Wu(t,n)})}
    ${oe({key:`perch.${n}.each`,label:"Each weighs",note:`${z(t.volume_each_ml,2)} ml`,shown:Se(a.units,t.mass_each_g,2),sum:Wu(t,n)})}
    ${t.casting_s?u`<p>${xo(t.casting_s)} of casting.</p>`:f} ${By(t,n)}`}function By(e,t){let{on_top:n,buried:o}=e;if(!n&&!o)return f;let i=r=>r===null?"not known":se(Rt(a.units,r)),s=r=>{let c=(o?.embeds??[]).map(r).filter(d=>d!==null);return c.length?se(Rt(a.units,Math.min(...c))):"none near"};return u`<h4>Fit of ${e.name}</h4>
    <dl class="facts">
      ${n?u`<div>
                <dt>Rests on a circle of</dt>
                <dd>${i(n.contact_mm)}</dd>
              </div>
              <div>
                <dt>Flat of the peak</dt>
                <dd>${i(n.peak_flat_mm)}</dd>
              </div>
              <div>
                <dt>Stands proud by</dt>
                <dd>${i(n.stands_proud_mm)}</dd>
              </div>`:f}
      ${o?u`<div>
                <dt>In each</dt>
                <dd>${o.embeds.length}</dd>
              </div>
              <div>
                <dt>Least cover to the floor</dt>
                <dd>${s(r=>r.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${s(r=>r.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${s(r=>r.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${s(r=>r.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${z(o.displaced_ml,1)} ml</dd>
              </div>`:f}
    </dl>
    ${_i(`perch.${t}.fit`,"How the fit is measured",qf(e,t))}`}function Fy(e,t){let n=ph(e.dust,re(Cn),Me("run",`/dust/${t}/name`),t);if(!n)return f;let o=d=>Me("run",`/dust/${t}/${d}`),i=D("run",`/dust/${t}/per_piece`)!==void 0,s=["pieces of the batch",String(e.batch.pieces)],r=n.exposed_cm2===0&&!i,c=oe({key:`dust.${t}`,label:n.name,shown:ze(a.units,Pt(n,"")),size:"weigh",sum:{formula:i?"powder = on one piece \xD7 pieces of the batch":"powder = on the surface \xD7 surface covered \xF7 share that lands \xD7 pieces of the batch",with:i?[["on one piece",o("per_piece"),"the run"],s]:[["on the surface",o("on_surface"),"the run"],["covered",o("covered")],["lands",o("lands")],s]}});return u`${c}${r?u`<p class="alarm">
          Nothing of a topping or a decoration sees the air, so it comes to nothing: say what is weighed for one piece.
        </p>`:f}`}function mh(e){let{cut:t}=e;return u`<div class="side">
      ${t?u`<p class="order ${a.is_old?"old":""}">
              Cut <b>${t.bars_each} bars</b> from each, ${t.columns} by ${t.rows}.
            </p>`:f}
      ${wi("cut",e)}
    </div>
    <div class="weights">
      ${t?u`${oe({key:"cut.bar",label:"A bar on average, fresh",note:Iy(t),shown:Se(a.units,e.piece.fresh_g),size:"weigh",sum:Cu(t)})}
            ${oe({key:"cut.offcuts",label:"Offcuts",shown:Se(a.units,t.offcuts_g),sum:Cu(t)})}
            ${Ny(t)}`:f}
    </div>
    <div class="all-questions">${xa()} ${gs()?f:Ra()}</div>`}function Iy(e){let t=e.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...t)*10)/10,o=Math.ceil(Math.max(...t)*10)/10;return`${z(n,1)} to ${z(o,1)} g`}function Ny(e){return e.one_more?.length?u`<ul class="limits">
    ${e.one_more.map(t=>u`<li>At ${t.size_text} ${t.direction} it gives ${t.bars} bars.</li>`)}
  </ul>`:f}var mo="/pour/layers",Co={at:mo,in_order:!0},Qu=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],Ma=()=>re(Co);function zy(){let e=t=>Ma().some(n=>t in n);return Qu.map(([t])=>t).find(e)??(e("rest")?"depth":"parts")}function Xu(e){let t=Ma(),n=zy();return t.length?u`<h3>
      Layers, lowest first ${e&&Qt(e)?u`<small>${Qt(e)}</small>`:f}
    </h3>
    ${Z({question:"All of them by",at:mo,is_told_elsewhere:!0,chosen:n,answers:Qu,puts:o=>jy(o,e)})}
    <div class="items">${t.map((o,i)=>Uy(o,i,n,e))}</div>
    ${je(Co,"One more layer on top",()=>He(Co,{name:Hy(t),[n]:""},"layer"))}`:u`<p class="choice">
      ${je(Co,"Pour it in layers",()=>He(Co,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function Hy(e){for(let t=e.length+1;;++t)if(!e.some(n=>n.name===`Layer ${t}`))return`Layer ${t}`}function fh(e,t,n){let o=e?.pour.layers?.[n];return o?.name===t.name?o:void 0}function jy(e,t){let n=Ma(),o=a.is_old?void 0:t,i=(s,r)=>{let c=fh(o,s,r);return e==="parts"||!c||e==="depth"&&"propped"in s?"":e==="depth"?`${z(c.to_mm-c.from_mm,3)} mm`:`${z(c.mass_each_g,3)} g`};return n.map((s,r)=>{let c=Aa(r),d=e!=="parts"&&n.length>1&&r===n.length-1;return{...c,...d?{rest:!0}:{[e]:i(s,r)}}})}var Aa=e=>Ze("run",`${mo}/${e}`,[...Qu.map(([t])=>t),"rest"]);function Uy(e,t,n,o){let i=`${mo}/${t}`,s=String(e.name)||`Layer ${t+1}`,r=fh(o,e,t);return u`<div class="part" id=${Ee(Co,t)} role="group" aria-label="Layer ${s}">
    ${r&&o?Jy(o,r,t):u`<p class="part-title">${s}</p>`} ${De("run",i)}
    ${Vy(e,t,n,s)}
    ${o&&r?r.colours.map((c,d)=>qy(o,r,c,t,d)):f}
    ${me({name:i,pointers:["name","colours","propped"].map(c=>`${i}/${c}`),summary:"Name, colours, prop",body:()=>u` ${v({label:"Name of the layer",at:`${i}/name`})} ${Zy(i,s)} ${Xy(i,t)}
        ${Ve(Co,t,s)}`})}
  </div>`}function Jy(e,t,n){return oe({key:`pour.layer.${n}`,label:t.name,note:`${ai(Rt(a.units,t.to_mm-t.from_mm))} thick, ${ai(Se(a.units,t.mass_each_g))} each`,shown:t.g_text===void 0?Se(a.units,t.g):ze(a.units,t),size:"weigh",sum:af(e.pour,t)})}function qy(e,t,n,o,i){return oe({key:`pour.layer.${o}.${i}`,label:n.name,note:n.teaspoons?`about ${z(n.teaspoons,1)} tsp`:"",shown:bn(a.units,n),size:"weigh",sum:df(e.pour,t,n,`${mo}/${o}/colours/${i}`)})}function Vy(e,t,n,o){if(n==="parts")return Ky(e,t,o);let i="rest"in e;return u`${i?f:v({label:`${o}, ${n}`,at:`${mo}/${t}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes what is left"
      @click=${()=>i?Yy(t,n):Gy(t,n)}
    >
      takes what is left
    </button>`}function Ky(e,t,n){let o=`${mo}/${t}/parts`,i=s=>()=>{a.typed=void 0,_t("run",o,Math.max(1,(Number(e.parts)||0)+s))};return u`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${v({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function Gy(e,t){let n=Ma().map((o,i)=>i===e?{...Aa(i),rest:!0}:o.rest?{...Aa(i),[t]:""}:o);rt("run","takes what is left",mo,n)}function Yy(e,t){let n=`${mo}/${e}`;rt("run","amount of the layer",n,{...Aa(e),[t]:""},Mo("run",`${n}/${t}`))}function Zy(e,t){let n={at:`${e}/colours`,in_order:!0};return u`${re(n).map((o,i)=>{let s=`${n.at}/${i}`,r=String(o.name)||`colour ${i+1}`;return u`<div class="part" id=${Ee(n,i)} role="group" aria-label="${r} in ${t}">
      <div class="part-head">
        <p class="part-title">Colour: ${r}</p>
        ${Ve(n,i,r)}
      </div>
      ${De("run",s)}
      <div class="row">
        ${v({label:"Colour",at:`${s}/name`})}
        ${v({label:"Rate",at:`${s}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${v({label:"Weight of a loose ml",at:`${s}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"Bulk density; needed for spoons."})}
      </div>
      ${Wo("run",s,r)}
    </div>`})}
  ${je(n,"Add a colour",()=>He(n,{name:"",rate:""},"colour"))}`}var Qy=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, behind it"],["-y","\u2212y, before it"]];function Xy(e,t){let n=`${e}/propped`,o=D("run",`${n}/low_side`);return t===re(Co).length-1&&D("run",n)===void 0?u`<p class="hint">The last layer is poured level.</p>`:Yt({at:n,name:"the prop",title:"The mould is propped up",add:"Prop the mould up for this layer",blank:{angle:"",low_side:""},body:()=>u`${v({label:"Leans by",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${Z({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o,answers:Qy,puts:s=>s})}
        ${v({label:"Low side, or its direction",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var fo=()=>E(a.run,"/pour/line/depth")!==void 0?"depth":"below_brim";function ec(e,t){let n=e.pour.depth_mm+e.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(t*2)/2),Math.floor(n*2)/2-.5),i=fo()==="depth"?n-o:o;a.typed=void 0,_t("run",`/pour/line/${fo()}`,`${z(i,2)} mm`)}function hh(e){let t=e.pour.depth_mm+e.pour.below_brim_mm,n=ts(E(a.run,`/pour/line/${fo()}`));return n===void 0?e.pour.below_brim_mm:fo()==="depth"?t-n:n}function ev(e,t){let n=e.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(e.pointerId);let i=r=>t((r.clientY-e.clientY)/o.height),s=()=>{n.removeEventListener("pointermove",i);for(let r of["pointerup","pointercancel"])n.removeEventListener(r,s)};n.addEventListener("pointermove",i);for(let r of["pointerup","pointercancel"])n.addEventListener(r,s)}function tv(e){if(!a.measured)return f;let t=e.pour.depth_mm+e.pour.below_brim_mm,n=hh(e),{share:o,h:i}=ah(e,t-n),s=d=>ev(d,h=>ec(e,n+h*i)),r=d=>{let h={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[d.key];h!==void 0&&(d.preventDefault(),ec(e,n+h))},c=d=>d&&(d.style.top=`${100*o}%`);return queueMicrotask(()=>c(document.querySelector(".line-handle")??void 0)),u`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(t)}
    aria-valuenow=${z(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${se(Rt(a.units,n))} below the brim"
    @pointerdown=${s}
    @keydown=${r}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function nv(e){let{pour:t}=e,n=se(Rt(a.units,t.below_brim_mm)),o=t.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=e.cut?"the loaf":"each";return u`<p class="order ${a.is_old?"old":""}">
    ${o}, <b>${se(Se(a.units,t.mass_each_g))}</b> ${i}.
  </p>`}function gh(e){let{pour:t}=e,n=o=>()=>ec(e,hh(e)+o);return u`<div class="side">
      ${nv(e)} ${wi("pour",e,tv(e))} ${$h(e)}
      <div class="stepper">
        <button type="button" @click=${n(-1)} aria-label="Pour line 1 mm higher">+ 1 mm</button>
        ${v({label:fo()==="depth"?"Deep":"Below brim",at:`/pour/line/${fo()}`,unit:"mm"})}
        <button type="button" @click=${n(1)} aria-label="Pour line 1 mm lower">− 1 mm</button>
      </div>
      ${oe({key:"pour.mm",label:"1 mm is",shown:gt(a.units,t.ml_per_mm,2),note:`${gn(t.ml_per_mm*t.density_g_per_ml,1)} g at the line`,sum:rf(t)})}
      ${oe({key:"pour.each",label:"Weigh into each",shown:Se(a.units,t.mass_each_g),size:"weigh",note:`${z(t.volume_each_ml,1)} ml`,sum:sf(t)})}
    </div>
    <div class="weights">
      ${Eo(e)} ${tc("pour","Weigh for the base",t.formula)} ${nc("pour",t)}
      ${oe({key:"pour.make",label:"Base to make",shown:Se(a.units,t.make_g),size:"weigh",sum:wa("pour",t)})}
      ${oe({key:"pour.density",label:"Density",shown:[`${t.density_g_per_ml} g/ml`,""],sum:ya("pour",t)})}
    </div>
    <div class="more">${Xu(e)} ${pr("pour")}</div>`}function _h(){let e=fo();return u`<div class="side">
      ${$h()} ${De("run","/pour/line")}
      ${v({label:e==="depth"?"Deep":"Below brim",at:`/pour/line/${e}`,unit:"mm"})}
    </div>
    <div class="more">${Xu()} ${pr("pour")}</div>`}function $h(e){let t=n=>{if(n===fo())return;let o=e&&!a.is_old?e.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;rt("run","pour line","/pour/line",{[n]:o===void 0?"":`${z(o,3)} mm`})};return Dt("The pour line is measured",fo(),[["below_brim","From the brim"],["depth","From the floor"]],t)}function ov(e){return e.teaspoons?`about ${z(e.teaspoons,1)} tsp`:""}function iv(e){let t=e.set_aside_for_colours_g?`${se(ze(a.units,{g:e.set_aside_for_colours_g,scale_step_g:e.scale_step_g}))} of it for the colours`:"";return[ov(e),t].filter(Boolean).join(", ")}function tc(e,t,n){return u`<div class="weigh-head">
    <h3>${t} <small>${n}</small></h3>
    <button
      type="button"
      @click=${()=>sr(e)}
      aria-label="Change the formula ${e==="pour"?"of the base":"of the topping"}"
    >
      Change the formula
    </button>
  </div>`}function nc(e,t,n=e){return u`${_a(t).map(({one:o,i})=>oc(e,t,o,i,n))}`}function oc(e,t,n,o,i=e){return oe({key:`${i}.${o}`,label:n.name,note:iv(n),shown:bn(a.units,n),size:"weigh",sum:pf(e,t,n)})}var sv=[0,50,80,100];function bh(e){let{pipe:t}=e;return t?u`<div class="side">
      <p class="order ${a.is_old?"old":""}">
        Pipe <b>${z(t.volume_each_ml,0)} ml</b> on each, ${se(Se(a.units,t.mass_each_g))} at this
        whip.
      </p>
      ${wi("pipe",e)}
      ${oe({key:"pipe.each",label:"Topping on each",shown:gt(a.units,t.volume_each_ml),note:`${z(t.in_headspace_each_ml,1)} ml of it below the brim`,sum:vf(t)})}
      ${av(e)} ${vh()} ${dv(e)}
    </div>
    <div class="weights">
      ${Eo(e)} ${tc("pipe","Weigh for the topping",t.formula)}
      ${e.whippings.map((n,o)=>rv(e,n,o))}
      ${oe({key:"pipe.density",label:"Whipped density",note:`overrun ${z(t.overrun_percent,0)} %`,shown:[`${t.density_g_per_ml} g/ml`,""],sum:ya("pipe",t)})}
      ${Hu(t)}
    </div>
    <div class="more">${zu(t)} ${Nu()}</div>`:sc()}var fr=e=>e===0?"pipe":`pipe.whipping${e}`;function ic(e,t){let n=hi(e,t);return n?u`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:f}function rv(e,t,n){let o=fr(n);return u`${ic(e,t)} ${nc("pipe",t,o)}
  ${oe({key:`${o}.make`,label:"Topping to make",note:hi(e,t),shown:Se(a.units,t.make_g),size:"weigh",sum:wa("pipe",t)})}`}function sc(){return u`<div class="more">${zu()}</div>
    <div class="side">${vh()} ${D("run","/pipe/whip_now")===void 0?f:yh()}</div>
    <div class="weights">${Hu()} ${Bf()}</div>
    <div class="more">${Nu()}</div>`}var wh=e=>Qt(e)?u`<small>${Qt(e)}</small>`:f;function av(e){return u`<h3>This bowl, now ${wh(e)}</h3>
    ${yh()} ${e.whippings.map((t,n)=>lv(e,t,n))}`}function lv(e,t,n){let o=t.pieces_now,i=o==null?0:t.pieces-o,s=i>0?`Short by ${i} at this whip.`:`Enough for the ${t.pieces} to make.`;return u`${ic(e,t)}
  ${o==null?f:oe({key:`${fr(n)}.now`,label:"This bowl pipes now",note:s,shown:[Et(o,"piece"),""],size:"weigh",sum:kf(t)})}
  ${cv(t,n)}`}function yh(){let e={holds:D("run","/pipe/whip/holds")??"",net:""};return Yt({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:e,body:uv})}function uv(){return u`<div class="row">
    ${v({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})}
    ${v({label:"Cup holds",at:"/pipe/whip_now/holds",unit:"ml",short:!0})}
  </div>`}function cv(e,t){return e.readings?.length?u`<table class="readings">
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
        ${e.readings.map(n=>u`<tr class=${n.planned?"planned":""}>
              <th scope="row">${z(n.net_g,1)} g${n.planned?" (planned)":""}</th>
              <td>${z(n.overrun_percent,0)} %</td>
              <td>${n.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${_i(`${fr(t)}.readings`,"How the table comes about",Uf(e))}`:f}function vh(){let e="/pipe/fills_headspace",t=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(Me("run",e))?.[1]?.replace(",",".")),n=Yn("run",e);return u`<h3 id="recess">How far does the topping fill the recess below the brim?</h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${sv.map(o=>u`<button
            type="button"
            aria-pressed=${o===t?"true":"false"}
            @click=${()=>_t("run",e,`${o} %`)}
          >
            ${pv(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${v({label:"Or as a share",at:e,unit:"%",hint:n?void 0:"A trial piped on flat paper misses this."})}`}function pv(e){let t=52*(e/100);return u`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${Xe`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-t/2} y="18" width=${t} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function dv(e){let t=e.whippings.map(i=>({one:i,words:mv(i)})).filter(({words:i})=>i),n=e.whippings[0],o=n?.limits??[];return!n||!o.length&&!t.length?f:u`<h3>What this batter allows ${wh(e)}</h3>
    ${t.map(({one:i,words:s})=>u`${ic(e,i)}
          <p>${s}.</p>`)}
    <ul class="limits">
      ${o.map(i=>u`<li class=${i.sets?"binds":""}>
            ${i.sets?u`<strong>Sets the batch: </strong>`:f}${i.text}
          </li>`)}
    </ul>
    ${_i("pipe.limits","How the limits come about",Jf(n))}`}function mv({piping_s:e,lye_spoonfuls:t}){return[e?`${xo(e)} of piping`:"",t?`${t.count} spoonfuls of lye, ${xo(t.altogether_s)}`:""].filter(Boolean).join("; ")}function ac(){let e="/lye_pot",t=D("run",`${e}/shared`)===!0;return!t&&!wn()?f:u`${Au(e,"Make one lye pot for both",t,{shared:!0})}
  ${t?v({label:"The empty pot weighs",at:`${e}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):f}`}function kh(){return u`<section class="shelf" aria-labelledby="extras-title">
    <h2 id="extras-title">Pot, bottles, label</h2>
    ${ac()} ${lc()} ${uc()}
  </section>`}function lc(e){let t={at:"/bottles"},n=re(t);return me({name:"bottles",pointers:[t.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>u` <p class="hint">
          A whole bottle is shared over the batters at one rate, never by
          halves.${e&&Qt(e)?` Weights are of ${Qt(e)}.`:""}
        </p>
        ${n.map((o,i)=>{let s=`${t.at}/${i}`,r=String(o.name)||`bottle ${i+1}`;return u`<div class="part" id=${Ee(t,i)} role="group" aria-label=${r}>
            <div class="part-head">
              <p class="part-title">${r}</p>
              ${Ve(t,i,r)}
            </div>
            ${De("run",s)} ${De("run",`${s}/shared`)}
            <div class="row">
              ${v({label:"Fragrance, as in the formulas",at:`${s}/name`})}
              ${v({label:"The bottle holds",at:`${s}/holds`,unit:"g",short:!0})}
            </div>
            ${e?fv(e,i,r):f}
          </div>`})}
        ${je(t,"Use up a bottle",()=>He(t,{name:"",holds:"",shared:"by rate"},"bottle"))}`})}function fv(e,t,n){let o=e.bottles?.[t];return o?.name!==n?f:o.parts.map((i,s)=>oe({key:`bottle.${t}.${s}`,label:`Into the ${i.part.toLowerCase()}`,note:`${z(i.percent_of_batter,2)} % of the batter`,shown:ze(a.units,Pt(i,"")),size:"weigh",sum:bf(e,t,s)}))}function uc(){return Yt({at:"/label",name:"the label",title:"For the label",add:"Draft the label",blank:{market:""},body:hv})}function hv(){let e=D("run","/label/market"),t=D("run","/label/weighed")===void 0?"said":"weighed";return u`${Z({question:"Where it is sold",at:"/label",asked_at:"/label/market",chosen:e,answers:[["EU","In the EU"],["US","In the US"]],puts:gv})}
  ${Z({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:t,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:_v})}
  ${t==="weighed"?$v():u`<div class="row">
          ${v({label:"Heavier or lighter by",at:"/label/spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${v({label:"Pour line higher or lower by",at:"/label/pour_line",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${v({label:"Your labels already say",at:"/label/states",unit:"g",optional:!0,hint:"It is held against the pieces."})}
  ${e==="EU"||D("run",rc)!==void 0?Au(rc,"With the e mark",D("run",rc)===!0,!0):f}`}var rc="/label/e_mark";function gv(e){return{...Ze("run","/label",e==="EU"?[]:["e_mark"]),market:e}}function _v(e){let t=Ze("run","/label",["weighed","spread","pour_line"]);return e==="weighed"?{...t,weighed:["","",""]}:t}function $v(){let e={at:"/label/weighed",least:3};return u`<div class="trials">
      ${re(e).map((t,n)=>u`<div class="row" id=${Ee(e,n)}>
            ${v({label:`Piece ${n+1}`,at:`${e.at}/${n}`,unit:"g",short:!0})}
            ${Ve(e,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${je(e,"One more piece",()=>He(e,"","piece"))}`}function Th(e){if(!da(e))return f;let{whole:t}=e,{batches:n}=t.pieces,o=vt(t)?`${Et(n,"batch","batches")} together`:"all whippings together";return u`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${xh(e,"pour","The base, whole run")}
      ${t.pipe?xh(e,"pipe","The topping, whole run"):f} ${yv(e)}
    </div>
  </section>`}var bv=e=>t=>t.name===e.name&&t.goes_into===e.goes_into;function wv(e,t,n){return(t==="pour"?[{batter:e.pour,words:""}]:(e.pipe?.whippings??[]).map(i=>({batter:i,words:e.pipe.whippings.length>1||i.count>1?`, whipping of ${i.pieces}, ${Do(i.count)}`:""}))).flatMap(({batter:i,words:s})=>{let r=i.ingredients.find(bv(n));return r?[[s,se(bn(a.units,r))]]:[]})}function xh(e,t,n){let{whole:o}=e,i=t==="pour"?o.pour:o.pipe,s=[..._a(i),...ps(i)];return u`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${s.map(({one:r,i:c})=>Da(`${t}.${c}`,r.name,bn(a.units,r),e,d=>wv(d,t,r)))}
    ${Da(`${t}.make`,t==="pour"?"Base in all":"Topping in all",Se(a.units,i.make_g),e,r=>[["",se(Se(a.units,r[t].make_g))]])}
  </div>`}var Da=(e,t,n,o,i)=>oe({key:`needs.${e}`,label:t,shown:n,sum:Sf(o.whole,i)});function yv(e){let{whole:t}=e,n=(t.pour.layers??[]).flatMap((s,r)=>s.colours.map((c,d)=>({layer:s,one:c,i:r,j:d}))),o=t.dust??[];if(!n.length&&!o.length)return f;let i=s=>ze(a.units,Pt(s,""));return u`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:s,one:r,i:c,j:d})=>Da(`colour.${c}.${d}`,`${r.name}, for ${s.name}`,bn(a.units,r),e,h=>{let b=h.pour.layers?.[c]?.colours[d];return b?[["",se(bn(a.units,b))]]:[]}))}
    ${o.map((s,r)=>Da(`dust.${r}`,s.name,i(s),e,c=>{let d=c.dust?.[r];return d?[["",se(i(d))]]:[]}))}
  </div>`}function Ph(e){return u`<section class="shelf" aria-labelledby="shelf-title">
    <h2 id="shelf-title">Lye shelf</h2>
    ${Eo(e)}
    <div class="jugs">
      ${Sh({slot:"pour",title:e.pipe?"Lye for the base":"Lye",batter:e.pour,pieces:e.batch.pieces,key:"pour"})}
      ${e.whippings.map((t,n)=>{let o=hi(e,t);return Sh({slot:"pipe",title:`Lye for the topping${o&&`, ${o}`}`,batter:t,pieces:e.batch.pieces,key:fr(n)})})}
    </div>
    ${kv(e)} ${ac()} ${lc(e)}
  </section>`}function Sh({slot:e,title:t,batter:n,pieces:o,key:i}){let{effective:s}=n.superfat_percent,r=di(e,o).length>0,c=`danger-${i.replaceAll(".","-")}`,d=i===e;return u`<div class="jug">
    <h3>${t} <small>${n.formula}</small></h3>
    ${ps(n).map(({one:h,i:b})=>oc(e,n,h,b,i))}
    ${oe({key:`${i}.strength`,label:"Lye strength",note:`water ${z(n.water_to_pure_alkali,2)} : 1 to alkali; water ${z(n.water_percent_of_fats,1)} % of the fats`,shown:[`${z(n.lye_strength_percent,1)} %`,""],sum:Eu(e,n)})}
    ${oe({key:`${i}.superfat`,label:"Effective superfat",shown:[`${Dn(s)}${r?" \u26A0":""}`,""],sum:lf(e,n)})}
    ${or(e,c,o)} ${Rh(n.superfat_percent)} ${vv(e,n,i)}
    ${!d||D(e,"/superfat")===void 0?f:v({label:"Superfat aimed at",of:e,at:"/superfat",unit:"%",described_by:r?c:void 0,hint:a.formulas[e]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function Rh(e){let{low:t,high:n,likely_low:o,likely_high:i,doubts:s}=e,r=`It lies between ${Dn(t)} and ${Dn(n)}, as lots, purity and scales may fall`,c=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${Dn(o)} and ${Dn(i)}.`,d=s?.[0],h=d?u` Most of the doubt is ${d.cause}: ${d.remedy}.`:f;return eu(t)?u`<p class="mind of-plan">
    <strong>Mind</strong> At its lowest there is lye left over. ${r}${c}
    ${d?h:"A finer scale, a larger batch or a higher aim mends it."}
  </p>`:u`<p class="aside of-plan">${r}${c} Some fat is left over even at the lowest.${h}</p>`}function vv(e,t,n){return t.heat?u`${Ah(t.heat)} ${_i(`${n}.heat`,"How the heat is reckoned",jf(e,t))}`:f}function Ah(e){let t=o=>se(Ud(a.units,o)),n=e.cooling.map(o=>`${o.shortest_min*60?xo(o.shortest_min*60):"at once"} to ${xo(o.longest_min*60)} ${o.in?`in ${o.in.replace(/^in /,"")}`:""}`);return u`<p class="aside of-plan">
    Water at ${t(e.water_at_c)}: the lye may reach ${t(e.peak_c)}; it boils at
    ${t(e.boils_at_c)}.${n.length?` To cool: ${n.join("; ")}.`:""}${e.at_pour_c===null?"":` Lye and fats meet at about ${t(e.at_pour_c)}.`}
  </p>`}function kv(e){let t=e.lye_pot;if(!t)return f;let{units:n}=a,o=(i,s,r,c,d="")=>oe({key:`pot.${i}`,label:s,note:d,shown:r,size:"weigh",sum:c});return u`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${z(t.strength_percent,1)} %${Qt(e)&&`; ${Qt(e)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",ze(n,Pt(t,"water_")),hf(e,t))}
    ${t.alkalis.map((i,s)=>o(`alkali.${s}`,`In the pot: ${i.name}`,ze(n,Pt(i,""),"down"),ff(e,i.name)))}
    ${o("lye","Lye in the pot",ze(n,Pt(t,"lye_")),gf(t),xv(t))}
    ${t.shares.map((i,s)=>u`${o(`share.${s}`,`Out of it for ${i.batter}`,ze(n,Pt(i,"lye_"),"down"),_f(e,t,s),`superfat then ${Dn(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${s}`,`and plain water to ${i.batter}`,ze(n,Pt(i,"top_up_")),$f(e,t,s)):f}
        ${or(s===0?"pour":"pipe","",e.batch.pieces)}
        ${i.superfat?Rh(i.superfat):f}`)}
    ${t.left_g?u`<p class="aside of-plan">
            ${se(ze(a.units,{g:t.left_g,g_text:t.left_g_text,oz_text:t.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:f}
    ${t.heat?Ah(t.heat):f}
  </div>`}function xv(e){if(e.full_pot_g===null)return"";let{g_text:t,oz_text:n,...o}=Pt(e,"lye_"),i=ze(a.units,{...o,g:e.full_pot_g,g_text:e.full_pot_g_text,oz_text:e.full_pot_oz_text});return`${se(i)} with the pot: make up with water to that after cooling`}var Tv={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Mind",note:"Note"};function Mh(e){let t=s=>s.severity==="danger",n=[...e.cautions.filter(t),...e.cautions.filter(s=>!t(s))],o=s=>u`<ul>
      ${s.map(r=>u`<li class=${r.severity}><strong>${Tv[r.severity]??r.severity}</strong> ${r.text}</li>`)}
    </ul>`,i=n.filter(s=>s.severity==="note");return u`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">What to watch <small>worst first</small></h2>
    ${o(n.filter(s=>s.severity!=="note"))}
    ${i.length?u`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:f}
  </section>`}function Dh(e){let{cost:t,fresh_g:n,cured_g:o,label_g:i,lightest:s,size:r}=e.piece,c=s?"A bar on average, ":"",d=b=>c?c+b.toLowerCase():b,h=Tf(e);return u`<section class="piece" aria-labelledby="piece-title">
    <h2 id="piece-title">The piece</h2>
    ${oe({key:"piece.fresh",label:d("Fresh"),shown:Se(a.units,n),sum:h})}
    ${o===null?f:oe({key:"piece.cured",label:d("Cured"),shown:Se(a.units,o),sum:h})}
    ${s?oe({key:"piece.lightest",label:"The lightest bar",note:s.cured_g===null?"fresh":"cured",shown:Se(a.units,s.cured_g??s.fresh_g),sum:h}):f}
    ${i===null?f:oe({key:"piece.label",label:"Net weight for the label",shown:Se(a.units,i,0),sum:h})}
    ${r?oe({key:"piece.size",label:"Over all",shown:[`${[r.width_mm,r.depth_mm,r.height_mm].map(b=>z(b,0)).join(" \xD7 ")} mm`,""],sum:Kf(e)}):f}
    ${t&&t.amount!==null?u`${oe({key:"piece.cost",label:"Materials for one",shown:[`${t.amount} ${t.currency}`,""],size:"weigh",note:`${t.total} ${t.currency} for the run`,sum:xf(e)})}
          ${t.unpriced.length?u`<p class="alarm">Unpriced, and not in this figure: ${t.unpriced.join(", ")}.</p>`:f}`:u`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
    ${Pv(e)} ${Sv(e)} ${uc()}
  </section>`}function Sv(e){let t=e.label;if(!t)return f;let n=(t.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,s)=>s?u`<h3>${i}</h3>
          <p>${s}</p>`:f;return u`<details>
    <summary>Label draft, ${t.market}</summary>
    ${o("Net quantity",t.net_quantity?`${t.net_quantity.statement}: ${t.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",t.as_saponified?.text)}
    ${o("Ingredients, as charged",t.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(t.remarks??[]).map(i=>u`<li>${i.text}</li>`)}
    </ul>
  </details>`}function Pv(e){let t=e.piece.cost?.materials.map(o=>o.name)??[];if(!t.length)return f;let n=o=>`/money/prices/${o.replaceAll("~","~0").replaceAll("/","~1")}`;return me({name:"prices",pointers:["/money/prices"],summary:"Prices paid",body:()=>u` ${t.map(o=>u`<div class="row">
            ${v({label:`${o}, paid`,at:`${n(o)}/paid`,optional:!0,short:!0})}
            ${v({label:`for (pack of ${o})`,at:`${n(o)}/for`,unit:"g",optional:!0,short:!0})}
          </div>`)}`})}function Eh(e){let t=Qt(e);return u`<section class="losses" aria-labelledby="losses-title">
    <h2 id="losses-title">Losses and scales</h2>
    <p class="aside">
      ${t?`Of ${t}: in`:"In"} the pieces ${se(Se(a.units,e.pour.in_pieces_g))} of base, lost
      ${se(Se(a.units,e.pour.lost_g))}${e.pipe?`; of topping ${se(Se(a.units,e.pipe.in_pieces_g))}, lost ${se(Se(a.units,e.pipe.lost_g))}`:""}.
    </p>
    <div class="row">
      ${cr("pour",e.pipe&&"Base")} ${e.pipe?cr("pipe","Topping"):f}
    </div>
    <div class="row">
      ${v({label:"Large scale reads",at:"/scales/large/reads",unit:"g",short:!0})}
      ${v({label:"Large scale holds",at:"/scales/large/holds",unit:"g",short:!0})}
      ${v({label:"Fine scale reads",at:"/scales/fine/reads",unit:"g",short:!0})}
      ${v({label:"Fine scale holds",at:"/scales/fine/holds",unit:"g",short:!0})}
    </div>
  </section>`}function Lh(e){let t=n=>()=>{a.units=n,localStorage.setItem("units",n),T()};return u`<header>
    <p class="mark" aria-hidden="true">▽ Brimwright</p>
    ${a.view==="run"||a.view==="formula"?u`<div class="tools" role="group" aria-label="Tools">
              <button type="button" @click=${e}>Runs and moulds</button>
              <button type="button" ?disabled=${!a.past.length} @click=${ls}>Undo</button>
              <button type="button" ?disabled=${!a.future.length} @click=${ua}>Redo</button>
            </div>
            <div class="tools" role="group" aria-label="Units">
              ${["metric","both","us"].map(n=>u`<button
                    type="button"
                    aria-pressed=${a.units===n?"true":"false"}
                    @click=${t(n)}
                  >
                    ${{metric:"g mm",both:"both",us:"oz in"}[n]}
                  </button>`)}
            </div>
            <p class="saving" role="status">${Rv()}</p>`:f}
  </header>`}function Rv(){let e=Av();if(e)return e;let{saving:t}=a,n=["saved","shipped"].includes(t.is)||a.formula_of==="apart";if(a.view==="formula"&&n)return Mv();switch(t.is){case"shipped":return"An example: your first change is saved as a copy.";case"saved":return`Saved in ${a.file}`;case"waiting":return"Saving ...";case"failed":return`Not saved: ${t.line}`;case"conflict":return"Not saved: say which is to stay."}}function Av(){let e=a.formulas.apart?"apart":"run",t=lo(e);return t?`Not saved: ${t.file} changed underneath; say which is to stay.`:(e==="apart"?[a.formulas.apart]:[a.formulas.pour,a.formulas.pipe]).some(o=>o&&o.document!==o.saved)?a.complaint&&a.complaint.file===""?`Not saved: ${a.complaint.problem}`:"Saving ...":""}function Mv(){let e=a.formulas[a.formula_of];return e?e.shipped?"Came with the program: your first change is saved as a copy.":`Saved in ${e.file}`:""}function Oh(){let{plan:e}=a,t=e&&pa(e);return u`
    ${tr()} ${cc()} ${e?Wv(e):u`<h1>${String(a.run.name??"")}</h1>`}
    ${e&&t?u`${Cv(t)} ${Ph(t)}
            <div class="beside">${Mh(e)} ${Dh(e)}</div>
            ${Th(t)} ${Eh(t)} ${Iv(e)} ${Hf(e)} ${Dv(t)}`:u`<p class="hint">${a.complaint?"No figures until this is mended.":"Reading the run ..."}</p>
            ${Ev()}`}
  `}function Dv(e){let t=i=>()=>{let s=document.getElementById(i);s.tabIndex=-1,s.focus({preventScroll:!0}),s.scrollIntoView({block:"start"})},n=[["run-title","Top"],["lane-pour","Pour"],["lane-pipe","Pipe"],["lane-perch","Perch"],["lane-cut","Cut"],["shelf-title","Lye"],...yu()?[]:[["watch-title","Watch"]],["piece-title","Piece"],["needs-title","Needs"],["mould-title","Mould"],["out-title","Print"]],o={"lane-pipe":wn(),"lane-cut":Ft(),"lane-perch":gs(),"needs-title":da(e)};return u`<nav class="parts" aria-label="Parts of this run">
    ${yu()?u`<button type="button" class="danger" @click=${t("watch-title")}>
            <span aria-hidden="true">⚠</span> Danger
          </button>`:f}${n.filter(([i])=>o[i]??!0).map(([i,s])=>u`<button type="button" @click=${t(i)}>${s}</button>`)}
  </nav>`}function Ev(){return u`<div class="row">
      ${v({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
      ${v({label:"Spoilage",at:"/spoilage",unit:"%",short:!0})}
    </div>
    ${ju()} ${a.complaint?Lv():f}`}function Lv(){let e=wn();return u`<div class="row">
      ${uo("Mould","/pour/mould",a.files?.moulds)}
      ${uo("Base","/pour/formula",a.files?.formulas)}
      ${e?uo("Topping","/pipe/formula",a.files?.formulas):f}
    </div>
    <div class="lanes">
      ${Bo("pour","Pour",_h())} ${e?Bo("pipe","Pipe",sc()):f}
      ${gs()?Bo("perch","Perch",Zu()):f}
      ${Ft()?Bo("cut","Cut",xa()):f}
    </div>
    ${kh()}`}function cc(){let e=a.complaint;return u`<div class="complaints" role="status">
    ${e?u`<p class="alarm">
              <strong>${a.plan?"The figures below are from before.":"No figures yet."}</strong>
              ${e.field?u`<code>${e.field}</code>: `:f}${fn(e)}
            </p>
            ${e.is_fault?u`<button type="button" @click=${pc}>Ask again</button>`:f}
            ${os("run")?Pa(a.run,e.field,e.remedy,(t,n)=>_t("run",t,n)):f}
            ${io()&&document.activeElement!==io()||Wh()?u`<button type="button" @click=${Ov}>Go to the field</button>`:f}`:f}
  </div>`}function pc(){$t(),a.saving.is==="failed"&&Zs()}var Wh=()=>["pour","pipe"].find(e=>a.complaint?.file&&a.complaint.field&&os(e));function Ov(){let e=io(),t=Wh();e?Ru(e):t&&Mm(t)}function Wv(e){let{sell:t,make:n,fillings:o,cavities:i,casts:s,batches:r}=e.pieces,c=vt(e)?`${r} batches, ${Et(o,"filling")}`:Mu(o,i);return u`<section class="order-of" aria-labelledby="run-title">
    <div>
      <h1 id="run-title">${e.run}</h1>
      ${typeof a.run.note=="string"?u`<p class="aside">${a.run.note}</p>`:f}
    </div>
    <div class="row">
      ${v({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
      ${v({label:"Spoilage",at:"/spoilage",unit:"%",short:!0})}
      ${uo("Mould","/pour/mould",a.files?.moulds)}
      ${uo("Base","/pour/formula",a.files?.formulas)}
      ${wn()?uo("Topping","/pipe/formula",a.files?.formulas):f}
      ${oe({key:"pieces.make",label:e.cut?"Bars to make":"Pieces to make",note:s!==n?`${s} casts, ${c}`:c,shown:[String(n),t===n?"":`for ${t}`],size:"weigh",sum:of(e)})}
    </div>
    <div class="batches">${Qm(e)} ${ju()}</div>
    <p class="aside">Tap a figure with = beside it to see how it comes about.</p>
  </section>`}function Cv(e){let t=wn();return u`<div class="lanes">
    ${Bo("pour","Pour",gh(e))} ${t?Bo("pipe","Pipe",bh(e)):f}
    ${gs()?Bo("perch","Perch",dh(e)):f}
    ${Ft()?Bo("cut","Cut",mh(e)):f}
    ${t?f:Bv("Pipe","This run has no topping.","Add a topping",Wf,Cf())}
    ${gs()||Ft()?f:ch()}
  </div>`}function Bo(e,t,n){let o=a.folded.has(e);return u`<section class="lane ${e}" aria-labelledby="lane-${e}">
    <div class="lane-head">
      <h2 id="lane-${e}" tabindex="-1">${t}</h2>
      <button
        type="button"
        aria-expanded=${o?"false":"true"}
        aria-label="${o?"Unfold":"Fold"} ${t}"
        @click=${()=>Qi(a.folded,e)}
      >
        ${o?"Unfold":"Fold"}
      </button>
    </div>
    ${o?f:u`<div class="lane-body">${n}</div>`}
  </section>`}function Bv(e,t,n,o,i=f){return u`<section class="lane unused" aria-label=${e}>
    <h2>${e}</h2>
    <p>${t}</p>
    <button type="button" @click=${o}>${n}</button>${i}
  </section>`}function Fv(e,t){let n={words:"The mould, filled",of:{gauge:{file:t,"below-brim":`${e.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:a.file,run:a.run}}};return e.pipe||e.perch?.length||e.pour.layers?.length?[o,n]:[n,o]}function Iv(e){let{measured:t}=a;if(!t)return f;let n=t.gauge.pockets[0],o=t.gauge.notes;return u`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${e.pour.mould}</small></h2>
    ${oe({key:"mould.brimful",label:"To the brim",note:`${se(Rt(a.units,n.brim_mm-n.floor_mm))} deep, ${t.gauge.pockets.length} ${t.gauge.pockets.length===1?"cavity":"cavities"}`,shown:gt(a.units,n.brimful_ml),sum:Vf()})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the broken line is the pour line</figcaption>
        <level-curve
          role="img"
          aria-label="Level curve: volume by depth, with the pour line at ${e.pour.depth_mm} millimetres"
          .gauge=${t.gauge}
          .line=${e.pour.depth_mm}
        ></level-curve>
      </figure>
      <figure>
        <figcaption>In the round</figcaption>
        <solid-panel .views=${Fv(e,t.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?u`<ul class="limits">
            ${o.map(i=>u`<li>${i.text}</li>`)}
          </ul>`:f}
  </section>`}var Nv="uplot",zv="u-hz",Hv="u-vt",jv="u-title",Uv="u-wrap",Jv="u-under",qv="u-over",Vv="u-axis",ki="u-off",Kv="u-select",Gv="u-cursor-x",Yv="u-cursor-y",Zv="u-cursor-pt",Qv="u-legend",Xv="u-live",e0="u-inline",t0="u-series",n0="u-marker",Ch="u-label",o0="u-value",gr="width",_r="height";var Bh="bottom",_s="left",dc="right",Ac="#000",Fh=Ac+"0",mc="mousemove",Ih="mousedown",fc="mouseup",Nh="mouseenter",zh="mouseleave",Hh="dblclick",i0="resize",s0="scroll",jh="change",Ca="dppxchange",Mc="--",xs=typeof window<"u",bc=xs?document:null,bs=xs?window:null,r0=xs?navigator:null,we,Ea;function wc(){let e=devicePixelRatio;we!=e&&(we=e,Ea&&vc(jh,Ea,wc),Ea=matchMedia(`(min-resolution: ${we-.001}dppx) and (max-resolution: ${we+.001}dppx)`),xi(jh,Ea,wc),bs.dispatchEvent(new CustomEvent(Ca)))}function tn(e,t){if(t!=null){let n=e.classList;!n.contains(t)&&n.add(t)}}function yc(e,t){let n=e.classList;n.contains(t)&&n.remove(t)}function Be(e,t,n){e.style[t]=n+"px"}function Bn(e,t,n,o){let i=bc.createElement(e);return t!=null&&tn(i,t),n?.insertBefore(i,o),i}function yn(e,t){return Bn("div",e,t)}var Uh=new WeakMap;function Qn(e,t,n,o,i){let s="translate("+t+"px,"+n+"px)",r=Uh.get(e);s!=r&&(e.style.transform=s,Uh.set(e,s),t<0||n<0||t>o||n>i?tn(e,ki):yc(e,ki))}var Jh=new WeakMap;function qh(e,t,n){let o=t+n,i=Jh.get(e);o!=i&&(Jh.set(e,o),e.style.background=t,e.style.borderColor=n)}var Vh=new WeakMap;function Kh(e,t,n,o){let i=t+""+n,s=Vh.get(e);i!=s&&(Vh.set(e,i),e.style.height=n+"px",e.style.width=t+"px",e.style.marginLeft=o?-t/2+"px":0,e.style.marginTop=o?-n/2+"px":0)}var Dc={passive:!0},a0={...Dc,capture:!0};function xi(e,t,n,o){t.addEventListener(e,n,o?a0:Dc)}function vc(e,t,n,o){t.removeEventListener(e,n,Dc)}xs&&wc();function Fn(e,t,n,o){let i;n=n||0,o=o||t.length-1;let s=o<=2147483647;for(;o-n>1;)i=s?n+o>>1:nn((n+o)/2),t[i]<e?n=i:o=i;return e-t[n]<=t[o]-e?n:o}function vg(e){return(n,o,i)=>{let s=-1,r=-1;for(let c=o;c<=i;c++)if(e(n[c])){s=c;break}for(let c=i;c>=o;c--)if(e(n[c])){r=c;break}return[s,r]}}var kg=e=>e!=null,xg=e=>e!=null&&e>0,Ia=vg(kg),l0=vg(xg);function u0(e,t,n,o=0,i=!1){let s=i?l0:Ia,r=i?xg:kg;[t,n]=s(e,t,n);let c=e[t],d=e[t];if(t>-1)if(o==1)c=e[t],d=e[n];else if(o==-1)c=e[n],d=e[t];else for(let h=t;h<=n;h++){let b=e[h];r(b)&&(b<c?c=b:b>d&&(d=b))}return[c??Pe,d??-Pe]}function Na(e,t,n,o){let i=Zh(e),s=Zh(t);e==t&&(i==-1?(e*=n,t/=n):(e/=n,t*=n));let r=n==10?ho:Tg,c=i==1?nn:vn,d=s==1?vn:nn,h=c(r(lt(e))),b=d(r(lt(t))),$=ws(n,h),y=ws(n,b);return n==10&&(h<0&&($=Re($,-h)),b<0&&(y=Re(y,-b))),o||n==2?(e=$*i,t=y*s):(e=Ag(e,$),t=za(t,y)),[e,t]}function Ec(e,t,n,o){let i=Na(e,t,n,o);return e==0&&(i[0]=0),t==0&&(i[1]=0),i}var Lc=.1,Gh={mode:3,pad:Lc},br={pad:0,soft:null,mode:0},c0={min:br,max:br};function Ba(e,t,n,o){return Ha(n)?Yh(e,t,n):(br.pad=n,br.soft=o?0:null,br.mode=o?3:0,Yh(e,t,c0))}function $e(e,t){return e??t}function p0(e,t,n){for(t=$e(t,0),n=$e(n,e.length-1);t<=n;){if(e[t]!=null)return!0;t++}return!1}function Yh(e,t,n){let o=n.min,i=n.max,s=$e(o.pad,0),r=$e(i.pad,0),c=$e(o.hard,-Pe),d=$e(i.hard,Pe),h=$e(o.soft,Pe),b=$e(i.soft,-Pe),$=$e(o.mode,0),y=$e(i.mode,0),S=t-e,P=ho(S),F=It(lt(e),lt(t)),K=ho(F),G=lt(K-P);(S<1e-24||G>10)&&(S=0,(e==0||t==0)&&(S=1e-24,$==2&&h!=Pe&&(s=0),y==2&&b!=-Pe&&(r=0)));let M=S||F||1e3,V=ho(M),L=ws(10,nn(V)),le=M*(S==0?e==0?.1:1:s),N=Re(Ag(e-le,L/10),24),ue=e>=h&&($==1||$==3&&N<=h||$==2&&N>=h)?h:Pe,ne=It(c,N<ue&&e>=ue?ue:In(ue,N)),de=M*(S==0?t==0?.1:1:r),te=Re(za(t+de,L/10),24),O=t<=b&&(y==1||y==3&&te>=b||y==2&&te<=b)?b:-Pe,ae=In(d,te>O&&t<=O?O:It(O,te));return ne==ae&&ne==0&&(ae=100),[ne,ae]}var d0=new Intl.NumberFormat(xs?r0.language:"en-US"),Oc=e=>d0.format(e),on=Math,Wa=on.PI,lt=on.abs,nn=on.floor,at=on.round,vn=on.ceil,In=on.min,It=on.max,ws=on.pow,Zh=on.sign,ho=on.log10,Tg=on.log2,m0=(e,t=1)=>on.sinh(e)*t,hc=(e,t=1)=>on.asinh(e/t),Pe=1/0;function Qh(e){return(ho((e^e>>31)-(e>>31))|0)+1}function kc(e,t,n){return In(It(e,t),n)}function Sg(e){return typeof e=="function"}function fe(e){return Sg(e)?e:()=>e}var f0=()=>{},Pg=e=>e,Rg=(e,t)=>t,h0=e=>null,Xh=e=>!0,eg=(e,t)=>e==t,g0=/\.\d*?(?=9{6,}|0{6,})/gm,Ti=e=>{if(Dg(e)||Io.has(e))return e;let t=`${e}`,n=t.match(g0);if(n==null)return e;let o=n[0].length-1;if(t.indexOf("e-")!=-1){let[i,s]=t.split("e");return+`${Ti(i)}e${s}`}return Re(e,o)};function yi(e,t){return Ti(Re(Ti(e/t))*t)}function za(e,t){return Ti(vn(Ti(e/t))*t)}function Ag(e,t){return Ti(nn(Ti(e/t))*t)}function Re(e,t=0){if(Dg(e))return e;let n=10**t,o=e*n*(1+Number.EPSILON);return at(o)/n}var Io=new Map;function Mg(e){return((""+e).split(".")[1]||"").length}function yr(e,t,n,o){let i=[],s=o.map(Mg);for(let r=t;r<n;r++){let c=lt(r),d=Re(ws(e,r),c);for(let h=0;h<o.length;h++){let b=e==10?+`${o[h]}e${r}`:o[h]*d,$=(r>=0?0:c)+(r>=s[h]?0:s[h]),y=e==10?b:Re(b,$);i.push(y),Io.set(y,$)}}return i}var wr={},Wc=[],ys=[null,null],Fo=Array.isArray,Dg=Number.isInteger,_0=e=>e===void 0;function tg(e){return typeof e=="string"}function Ha(e){let t=!1;if(e!=null){let n=e.constructor;t=n==null||n==Object}return t}function $0(e){return e!=null&&typeof e=="object"}var b0=Object.getPrototypeOf(Uint8Array),Eg="__proto__";function vs(e,t=Ha){let n;if(Fo(e)){let o=e.find(i=>i!=null);if(Fo(o)||t(o)){n=Array(e.length);for(let i=0;i<e.length;i++)n[i]=vs(e[i],t)}else n=e.slice()}else if(e instanceof b0)n=e.slice();else if(t(e)){n={};for(let o in e)o!=Eg&&(n[o]=vs(e[o],t))}else n=e;return n}function nt(e){let t=arguments;for(let n=1;n<t.length;n++){let o=t[n];for(let i in o)i!=Eg&&(Ha(e[i])?nt(e[i],vs(o[i])):e[i]=vs(o[i]))}return e}var w0=0,y0=1,v0=2;function k0(e,t,n){for(let o=0,i,s=-1;o<t.length;o++){let r=t[o];if(r>s){for(i=r-1;i>=0&&e[i]==null;)e[i--]=null;for(i=r+1;i<n&&e[i]==null;)e[s=i++]=null}}}function x0(e,t){if(P0(e)){let r=e[0].slice();for(let c=1;c<e.length;c++)r.push(...e[c].slice(1));return R0(r[0])||(r=S0(r)),r}let n=new Set;for(let r=0;r<e.length;r++){let d=e[r][0],h=d.length;for(let b=0;b<h;b++)n.add(d[b])}let o=[Array.from(n).sort((r,c)=>r-c)],i=o[0].length,s=new Map;for(let r=0;r<i;r++)s.set(o[0][r],r);for(let r=0;r<e.length;r++){let c=e[r],d=c[0];for(let h=1;h<c.length;h++){let b=c[h],$=Array(i).fill(void 0),y=t?t[r][h]:y0,S=[];for(let P=0;P<b.length;P++){let F=b[P],K=s.get(d[P]);F===null?y!=w0&&($[K]=F,y==v0&&S.push(K)):$[K]=F}k0($,S,i),o.push($)}}return o}var T0=typeof queueMicrotask>"u"?e=>Promise.resolve().then(e):queueMicrotask;function S0(e){let t=e[0],n=t.length,o=Array(n);for(let s=0;s<o.length;s++)o[s]=s;o.sort((s,r)=>t[s]-t[r]);let i=[];for(let s=0;s<e.length;s++){let r=e[s],c=Array(n);for(let d=0;d<n;d++)c[d]=r[o[d]];i.push(c)}return i}function P0(e){let t=e[0][0],n=t.length;for(let o=1;o<e.length;o++){let i=e[o][0];if(i.length!=n)return!1;if(i!=t){for(let s=0;s<n;s++)if(i[s]!=t[s])return!1}}return!0}function R0(e,t=100){let n=e.length;if(n<=1)return!0;let o=0,i=n-1;for(;o<=i&&e[o]==null;)o++;for(;i>=o&&e[i]==null;)i--;if(i<=o)return!0;let s=It(1,nn((i-o+1)/t));for(let r=e[o],c=o+s;c<=i;c+=s){let d=e[c];if(d!=null){if(d<=r)return!1;r=d}}return!0}var Lg=["January","February","March","April","May","June","July","August","September","October","November","December"],Og=["Sunday","Monday","Tuesday","Wednesday","Thursday","Friday","Saturday"];function Wg(e){return e.slice(0,3)}var A0=Og.map(Wg),M0=Lg.map(Wg),D0={MMMM:Lg,MMM:M0,WWWW:Og,WWW:A0};function hr(e){return(e<10?"0":"")+e}function E0(e){return(e<10?"00":e<100?"0":"")+e}var L0={YYYY:e=>e.getFullYear(),YY:e=>(e.getFullYear()+"").slice(2),MMMM:(e,t)=>t.MMMM[e.getMonth()],MMM:(e,t)=>t.MMM[e.getMonth()],MM:e=>hr(e.getMonth()+1),M:e=>e.getMonth()+1,DD:e=>hr(e.getDate()),D:e=>e.getDate(),WWWW:(e,t)=>t.WWWW[e.getDay()],WWW:(e,t)=>t.WWW[e.getDay()],HH:e=>hr(e.getHours()),H:e=>e.getHours(),h:e=>{let t=e.getHours();return t==0?12:t>12?t-12:t},AA:e=>e.getHours()>=12?"PM":"AM",aa:e=>e.getHours()>=12?"pm":"am",a:e=>e.getHours()>=12?"p":"a",mm:e=>hr(e.getMinutes()),m:e=>e.getMinutes(),ss:e=>hr(e.getSeconds()),s:e=>e.getSeconds(),fff:e=>E0(e.getMilliseconds())};function Cc(e,t){t=t||D0;let n=[],o=/\{([a-z]+)\}|[^{]+/gi,i;for(;i=o.exec(e);)n.push(i[0][0]=="{"?L0[i[1]]:i[0]);return s=>{let r="";for(let c=0;c<n.length;c++)r+=typeof n[c]=="string"?n[c]:n[c](s,t);return r}}var O0=new Intl.DateTimeFormat().resolvedOptions().timeZone;function W0(e,t){let n;return t=="UTC"||t=="Etc/UTC"?n=new Date(+e+e.getTimezoneOffset()*6e4):t==O0?n=e:(n=new Date(e.toLocaleString("en-US",{timeZone:t})),n.setMilliseconds(e.getMilliseconds())),n}var Cg=e=>e%1==0,Fa=[1,2,2.5,5],C0=yr(10,-32,0,Fa),Bg=yr(10,0,32,Fa),B0=Bg.filter(Cg),vi=C0.concat(Bg),Bc=`
`,Fg="{YYYY}",ng=Bc+Fg,Ig="{M}/{D}",$r=Bc+Ig,La=$r+"/{YY}",Ng="{aa}",F0="{h}:{mm}",$s=F0+Ng,og=Bc+$s,ig=":{ss}",ve=null;function zg(e){let t=e*1e3,n=t*60,o=n*60,i=o*24,s=i*30,r=i*365,d=(e==1?yr(10,0,3,Fa).filter(Cg):yr(10,-3,0,Fa)).concat([t,t*5,t*10,t*15,t*30,n,n*5,n*10,n*15,n*30,o,o*2,o*3,o*4,o*6,o*8,o*12,i,i*2,i*3,i*4,i*5,i*6,i*7,i*8,i*9,i*10,i*15,s,s*2,s*3,s*4,s*6,r,r*2,r*5,r*10,r*25,r*50,r*100]),h=[[r,Fg,ve,ve,ve,ve,ve,ve,1],[i*28,"{MMM}",ng,ve,ve,ve,ve,ve,1],[i,Ig,ng,ve,ve,ve,ve,ve,1],[o,"{h}"+Ng,La,ve,$r,ve,ve,ve,1],[n,$s,La,ve,$r,ve,ve,ve,1],[t,ig,La+" "+$s,ve,$r+" "+$s,ve,og,ve,1],[e,ig+".{fff}",La+" "+$s,ve,$r+" "+$s,ve,og,ve,1]];function b($){return(y,S,P,F,K,G)=>{let M=[],V=K>=r,L=K>=s&&K<r,le=$(P),N=Re(le*e,3),ue=gc(le.getFullYear(),V?0:le.getMonth(),L||V?1:le.getDate()),ne=Re(ue*e,3);if(L||V){let de=L?K/s:0,te=V?K/r:0,O=N==ne?N:Re(gc(ue.getFullYear()+te,ue.getMonth()+de,1)*e,3),ae=new Date(at(O/e)),H=ae.getFullYear(),X=ae.getMonth();for(let q=0;O<=F;q++){let he=gc(H+te*q,X+de*q,1),J=he-$(Re(he*e,3));O=Re((+he+J)*e,3),O<=F&&M.push(O)}}else{let de=K>=i?i:K,te=nn(P)-nn(N),O=ne+te+za(N-ne,de);M.push(O);let ae=$(O),H=ae.getHours()+ae.getMinutes()/n+ae.getSeconds()/o,X=K/o,q=y.axes[S]._space,he=G/q;for(;O=Re(O+K,e==1?0:3),!(O>F);)if(X>1){let J=nn(Re(H+X,6))%24,ge=$(O).getHours()-J;ge>1&&(ge=-1),O-=ge*o,H=(H+X)%24;let xe=M[M.length-1];Re((O-xe)/K,3)*he>=.7&&M.push(O)}else M.push(O)}return M}}return[d,h,b]}var[I0,N0,z0]=zg(1),[H0,j0,U0]=zg(.001);yr(2,-53,53,[1]);function sg(e,t){return e.map(n=>n.map((o,i)=>i==0||i==8||o==null?o:t(i==1||n[8]==0?o:n[1]+o)))}function rg(e,t){return(n,o,i,s,r)=>{let c=t.find(P=>r>=P[0])||t[t.length-1],d,h,b,$,y,S;return o.map(P=>{let F=e(P),K=F.getFullYear(),G=F.getMonth(),M=F.getDate(),V=F.getHours(),L=F.getMinutes(),le=F.getSeconds(),N=K!=d&&c[2]||G!=h&&c[3]||M!=b&&c[4]||V!=$&&c[5]||L!=y&&c[6]||le!=S&&c[7]||c[1];return d=K,h=G,b=M,$=V,y=L,S=le,N(F)})}}function J0(e,t){let n=Cc(t);return(o,i,s,r,c)=>i.map(d=>n(e(d)))}function gc(e,t,n){return new Date(e,t,n)}function ag(e,t){return t(e)}var q0="{YYYY}-{MM}-{DD} {h}:{mm}{aa}";function lg(e,t){return(n,o,i,s)=>s==null?Mc:t(e(o))}function V0(e,t){let n=e.series[t];return n.width?n.stroke(e,t):n.points.width?n.points.stroke(e,t):null}function K0(e,t){return e.series[t].fill(e,t)}var G0={show:!0,live:!0,isolate:!1,mount:f0,markers:{show:!0,width:2,stroke:V0,fill:K0,dash:"solid"},idx:null,idxs:null,values:[]};function Y0(e,t){let n=e.cursor.points,o=yn(),i=n.size(e,t);Be(o,gr,i),Be(o,_r,i);let s=i/-2;Be(o,"marginLeft",s),Be(o,"marginTop",s);let r=n.width(e,t,i);return r&&Be(o,"borderWidth",r),o}function Z0(e,t){let n=e.series[t].points;return n._fill||n._stroke}function Q0(e,t){let n=e.series[t].points;return n._stroke||n._fill}function X0(e,t){return e.series[t].points.size}var _c=[0,0];function ek(e,t,n){return _c[0]=t,_c[1]=n,_c}function Oa(e,t,n,o=!0){return i=>{i.button==0&&(!o||i.target==t)&&n(i)}}function $c(e,t,n,o=!0){return i=>{(!o||i.target==t)&&n(i)}}var tk={show:!0,x:!0,y:!0,lock:!1,move:ek,points:{one:!1,show:Y0,size:X0,width:0,stroke:Q0,fill:Z0},bind:{mousedown:Oa,mouseup:Oa,click:Oa,dblclick:Oa,mousemove:$c,mouseleave:$c,mouseenter:$c},drag:{setScale:!0,x:!0,y:!1,dist:0,uni:null,click:(e,t)=>{t.stopPropagation(),t.stopImmediatePropagation()},_x:!1,_y:!1},focus:{dist:(e,t,n,o,i)=>o-i,prox:-1,bias:0},hover:{skip:[void 0],prox:null,bias:0},left:-10,top:-10,idx:null,dataIdx:null,idxs:null,event:null},Hg={show:!0,stroke:"rgba(0,0,0,0.07)",width:2},Fc=nt({},Hg,{filter:Rg}),jg=nt({},Fc,{size:10}),Ug=nt({},Hg,{show:!1}),Ic='12px system-ui, -apple-system, "Segoe UI", Roboto, "Helvetica Neue", Arial, "Noto Sans", sans-serif, "Apple Color Emoji", "Segoe UI Emoji", "Segoe UI Symbol", "Noto Color Emoji"',Jg="bold "+Ic,qg=1.5,ug={show:!0,scale:"x",stroke:Ac,space:50,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:Jg,side:2,grid:Fc,ticks:jg,border:Ug,font:Ic,lineGap:qg,rotate:0},nk="Value",ok="Time",cg={show:!0,scale:"x",auto:!1,sorted:1,min:Pe,max:-Pe,idxs:[]};function ik(e,t,n,o,i){return t.map(s=>s==null?"":Oc(s))}function sk(e,t,n,o,i,s,r){let c=[],d=Io.get(i)||0;n=r?n:Re(za(n,i),d);for(let h=n;h<=o;h=Re(h+i,d))c.push(Object.is(h,-0)?0:h);return c}function xc(e,t,n,o,i,s,r){let c=[],d=e.scales[e.axes[t].scale].log,h=d==10?ho:Tg,b=nn(h(n));i=ws(d,b),d==10&&(i=vi[Fn(i,vi)]);let $=n,y=i*d;d==10&&(y=vi[Fn(y,vi)]);do c.push($),$=$+i,d==10&&!Io.has($)&&($=Re($,Io.get(i))),$>=y&&(i=$,y=i*d,d==10&&(y=vi[Fn(y,vi)]));while($<=o);return c}function rk(e,t,n,o,i,s,r){let d=e.scales[e.axes[t].scale].asinh,h=o>d?xc(e,t,It(d,n),o,i):[d],b=o>=0&&n<=0?[0]:[];return(n<-d?xc(e,t,It(d,-o),-n,i):[d]).reverse().map(y=>-y).concat(b,h)}var Vg=/./,ak=/[12357]/,lk=/[125]/,pg=/1/,Tc=(e,t,n,o)=>e.map((i,s)=>t==4&&i==0||s%o==0&&n.test(i.toExponential()[i<0?1:0])?i:null);function uk(e,t,n,o,i){let s=e.axes[n],r=s.scale,c=e.scales[r],d=e.valToPos,h=s._space,b=d(10,r),$=d(9,r)-b>=h?Vg:d(7,r)-b>=h?ak:d(5,r)-b>=h?lk:pg;if($==pg){let y=lt(d(1,r)-b);if(y<h)return Tc(t.slice().reverse(),c.distr,$,vn(h/y)).reverse()}return Tc(t,c.distr,$,1)}function ck(e,t,n,o,i){let s=e.axes[n],r=s.scale,c=s._space,d=e.valToPos,h=lt(d(1,r)-d(2,r));return h<c?Tc(t.slice().reverse(),3,Vg,vn(c/h)).reverse():t}function pk(e,t,n,o){return o==null?Mc:t==null?"":Oc(t)}var dg={show:!0,scale:"y",stroke:Ac,space:30,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:Jg,side:3,grid:Fc,ticks:jg,border:Ug,font:Ic,lineGap:qg,rotate:0};function dk(e,t){let n=3+(e||1)*2;return Re(n*t,3)}function mk(e,t){let{scale:n,idxs:o}=e.series[0],i=e._data[0],s=e.valToPos(i[o[0]],n,!0),r=e.valToPos(i[o[1]],n,!0),c=lt(r-s),d=e.series[t],h=c/(d.points.space*we);return o[1]-o[0]<=h}var mg={scale:null,auto:!0,sorted:0,min:Pe,max:-Pe},Kg=(e,t,n,o,i)=>i,fg={show:!0,auto:!0,sorted:0,gaps:Kg,alpha:1,facets:[nt({},mg,{scale:"x"}),nt({},mg,{scale:"y"})]},hg={scale:"y",auto:!0,sorted:0,show:!0,spanGaps:!1,gaps:Kg,alpha:1,points:{show:mk,filter:null},values:null,min:Pe,max:-Pe,idxs:[],path:null,clip:null};function fk(e,t,n,o,i){return n/10}var Gg={time:!0,auto:!0,distr:1,log:10,asinh:1,min:null,max:null,dir:1,ori:0},hk=nt({},Gg,{time:!1,ori:1}),gg={};function Yg(e,t){let n=gg[e];return n||(n={key:e,plots:[],sub(o){n.plots.push(o)},unsub(o){n.plots=n.plots.filter(i=>i!=o)},pub(o,i,s,r,c,d,h){for(let b=0;b<n.plots.length;b++)n.plots[b]!=i&&n.plots[b].pub(o,i,s,r,c,d,h)}},e!=null&&(gg[e]=n)),n}var ks=1,Sc=2;function Si(e,t,n){let o=e.mode,i=e.series[t],s=o==2?e._data[t]:e._data,r=e.scales,c=e.bbox,d=s[0],h=o==2?s[1]:s[t],b=o==2?r[i.facets[0].scale]:r[e.series[0].scale],$=o==2?r[i.facets[1].scale]:r[i.scale],y=c.left,S=c.top,P=c.width,F=c.height,K=e.valToPosH,G=e.valToPosV;return b.ori==0?n(i,d,h,b,$,K,G,y,S,P,F,Ua,Ts,qa,Qg,e_):n(i,d,h,b,$,G,K,S,y,F,P,Ja,Ss,Hc,Xg,t_)}function Nc(e,t){let n=0,o=0,i=$e(e.bands,Wc);for(let s=0;s<i.length;s++){let r=i[s];r.series[0]==t?n=r.dir:r.series[1]==t&&(r.dir==1?o|=1:o|=2)}return[n,o==1?-1:o==2?1:o==3?2:0]}function gk(e,t,n,o,i){let s=e.mode,r=e.series[t],c=s==2?r.facets[1].scale:r.scale,d=e.scales[c];return i==-1?d.min:i==1?d.max:d.distr==3?d.dir==1?d.min:d.max:0}function go(e,t,n,o,i,s){return Si(e,t,(r,c,d,h,b,$,y,S,P,F,K)=>{let G=r.pxRound,M=h.dir*(h.ori==0?1:-1),V=h.ori==0?Ts:Ss,L,le;M==1?(L=n,le=o):(L=o,le=n);let N=G($(c[L],h,F,S)),ue=G(y(d[L],b,K,P)),ne=G($(c[le],h,F,S)),de=G(y(s==1?b.max:b.min,b,K,P)),te=new Path2D(i);return V(te,ne,de),V(te,N,de),V(te,N,ue),te})}function ja(e,t,n,o,i,s){let r=null;if(e.length>0){r=new Path2D;let c=t==0?qa:Hc,d=n;for(let $=0;$<e.length;$++){let y=e[$];if(y[1]>y[0]){let S=y[0]-d;S>0&&c(r,d,o,S,o+s),d=y[1]}}let h=n+i-d,b=10;h>0&&c(r,d,o-b/2,h,o+s+b)}return r}function _k(e,t,n){let o=e[e.length-1];o&&o[0]==t?o[1]=n:e.push([t,n])}function zc(e,t,n,o,i,s,r){let c=[],d=e.length;for(let h=i==1?n:o;h>=n&&h<=o;h+=i)if(t[h]===null){let $=h,y=h;if(i==1)for(;++h<=o&&t[h]===null;)y=h;else for(;--h>=n&&t[h]===null;)y=h;let S=s(e[$]),P=y==$?S:s(e[y]),F=$-i;S=r<=0&&F>=0&&F<d?s(e[F]):S;let G=y+i;P=r>=0&&G>=0&&G<d?s(e[G]):P,P>=S&&c.push([S,P])}return c}function _g(e){return e==0?Pg:e==1?at:t=>yi(t,e)}function Zg(e){let t=e==0?Ua:Ja,n=e==0?(i,s,r,c,d,h)=>{i.arcTo(s,r,c,d,h)}:(i,s,r,c,d,h)=>{i.arcTo(r,s,d,c,h)},o=e==0?(i,s,r,c,d)=>{i.rect(s,r,c,d)}:(i,s,r,c,d)=>{i.rect(r,s,d,c)};return(i,s,r,c,d,h=0,b=0)=>{h==0&&b==0?o(i,s,r,c,d):(h=In(h,c/2,d/2),b=In(b,c/2,d/2),t(i,s+h,r),n(i,s+c,r,s+c,r+d,h),n(i,s+c,r+d,s,r+d,b),n(i,s,r+d,s,r,b),n(i,s,r,s+c,r,h),i.closePath())}}var Ua=(e,t,n)=>{e.moveTo(t,n)},Ja=(e,t,n)=>{e.moveTo(n,t)},Ts=(e,t,n)=>{e.lineTo(t,n)},Ss=(e,t,n)=>{e.lineTo(n,t)},qa=Zg(0),Hc=Zg(1),Qg=(e,t,n,o,i,s)=>{e.arc(t,n,o,i,s)},Xg=(e,t,n,o,i,s)=>{e.arc(n,t,o,i,s)},e_=(e,t,n,o,i,s,r)=>{e.bezierCurveTo(t,n,o,i,s,r)},t_=(e,t,n,o,i,s,r)=>{e.bezierCurveTo(n,t,i,o,r,s)};function n_(e){return(t,n,o,i,s)=>Si(t,n,(r,c,d,h,b,$,y,S,P,F,K)=>{let{pxRound:G,points:M}=r,V,L;h.ori==0?(V=Ua,L=Qg):(V=Ja,L=Xg);let le=Re(M.width*we,3),N=(M.size-M.width)/2*we,ue=Re(N*2,3),ne=new Path2D,de=new Path2D,{left:te,top:O,width:ae,height:H}=t.bbox;qa(de,te-ue,O-ue,ae+ue*2,H+ue*2);let X=q=>{if(d[q]!=null){let he=G($(c[q],h,F,S)),J=G(y(d[q],b,K,P));V(ne,he+N,J),L(ne,he,J,N,0,Wa*2)}};if(s)s.forEach(X);else for(let q=o;q<=i;q++)X(q);return{stroke:le>0?ne:null,fill:ne,clip:de,flags:ks|Sc}})}function o_(e){return(t,n,o,i,s,r)=>{o!=i&&(s!=o&&r!=o&&e(t,n,o),s!=i&&r!=i&&e(t,n,i),e(t,n,r))}}var $k=o_(Ts),bk=o_(Ss);function i_(e){let t=$e(e?.alignGaps,0);return(n,o,i,s)=>Si(n,o,(r,c,d,h,b,$,y,S,P,F,K)=>{[i,s]=Ia(d,i,s);let G=r.pxRound,M=H=>G($(H,h,F,S)),V=H=>G(y(H,b,K,P)),L,le;h.ori==0?(L=Ts,le=$k):(L=Ss,le=bk);let N=h.dir*(h.ori==0?1:-1),ue={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:ks},ne=ue.stroke,de=!1;if(s-i>=F*4){let H=j=>n.posToVal(j,h.key,!0),X=null,q=null,he,J,Nt,Fe=M(c[N==1?i:s]),ge=M(c[i]),xe=M(c[s]),ce=H(N==1?ge+1:xe-1);for(let j=N==1?i:s;j>=i&&j<=s;j+=N){let ot=c[j],Ie=(N==1?ot<ce:ot>ce)?Fe:M(ot),ye=d[j];Ie==Fe?ye!=null?(J=ye,X==null?(L(ne,Ie,V(J)),he=X=q=J):J<X?X=J:J>q&&(q=J)):ye===null&&(de=!0):(X!=null&&le(ne,Fe,V(X),V(q),V(he),V(J)),ye!=null?(J=ye,L(ne,Ie,V(J)),X=q=he=J):(X=q=null,ye===null&&(de=!0)),Fe=Ie,ce=H(Fe+N))}X!=null&&X!=q&&Nt!=Fe&&le(ne,Fe,V(X),V(q),V(he),V(J))}else for(let H=N==1?i:s;H>=i&&H<=s;H+=N){let X=d[H];X===null?de=!0:X!=null&&L(ne,M(c[H]),V(X))}let[O,ae]=Nc(n,o);if(r.fill!=null||O!=0){let H=ue.fill=new Path2D(ne),X=r.fillTo(n,o,r.min,r.max,O),q=V(X),he=M(c[i]),J=M(c[s]);N==-1&&([J,he]=[he,J]),L(H,J,q),L(H,he,q)}if(!r.spanGaps){let H=[];de&&H.push(...zc(c,d,i,s,N,M,t)),ue.gaps=H=r.gaps(n,o,i,s,H),ue.clip=ja(H,h.ori,S,P,F,K)}return ae!=0&&(ue.band=ae==2?[go(n,o,i,s,ne,-1),go(n,o,i,s,ne,1)]:go(n,o,i,s,ne,ae)),ue})}function wk(e){let t=$e(e.align,1),n=$e(e.ascDesc,!1),o=$e(e.alignGaps,0),i=$e(e.extend,!1);return(s,r,c,d)=>Si(s,r,(h,b,$,y,S,P,F,K,G,M,V)=>{[c,d]=Ia($,c,d);let L=h.pxRound,{left:le,width:N}=s.bbox,ue=ge=>L(P(ge,y,M,K)),ne=ge=>L(F(ge,S,V,G)),de=y.ori==0?Ts:Ss,te={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:ks},O=te.stroke,ae=y.dir*(y.ori==0?1:-1),H=ne($[ae==1?c:d]),X=ue(b[ae==1?c:d]),q=X,he=X;i&&t==-1&&(he=le,de(O,he,H)),de(O,X,H);for(let ge=ae==1?c:d;ge>=c&&ge<=d;ge+=ae){let xe=$[ge];if(xe==null)continue;let ce=ue(b[ge]),j=ne(xe);t==1?de(O,ce,H):de(O,q,j),de(O,ce,j),H=j,q=ce}let J=q;i&&t==1&&(J=le+N,de(O,J,H));let[Nt,Fe]=Nc(s,r);if(h.fill!=null||Nt!=0){let ge=te.fill=new Path2D(O),xe=h.fillTo(s,r,h.min,h.max,Nt),ce=ne(xe);de(ge,J,ce),de(ge,he,ce)}if(!h.spanGaps){let ge=[];ge.push(...zc(b,$,c,d,ae,ue,o));let xe=h.width*we/2,ce=n||t==1?xe:-xe,j=n||t==-1?-xe:xe;ge.forEach(ot=>{ot[0]+=ce,ot[1]+=j}),te.gaps=ge=h.gaps(s,r,c,d,ge),te.clip=ja(ge,y.ori,K,G,M,V)}return Fe!=0&&(te.band=Fe==2?[go(s,r,c,d,O,-1),go(s,r,c,d,O,1)]:go(s,r,c,d,O,Fe)),te})}function $g(e,t,n,o,i,s,r=Pe){if(e.length>1){let c=null;for(let d=0,h=1/0;d<e.length;d++)if(t[d]!==void 0){if(c!=null){let b=lt(e[d]-e[c]);b<h&&(h=b,r=lt(n(e[d],o,i,s)-n(e[c],o,i,s)))}c=d}}return r}function yk(e){e=e||wr;let t=$e(e.size,[.6,Pe,1]),n=e.align||0,o=e.gap||0,i=e.radius;i=i==null?[0,0]:typeof i=="number"?[i,0]:i;let s=fe(i),r=1-t[0],c=$e(t[1],Pe),d=$e(t[2],1),h=$e(e.disp,wr),b=$e(e.each,S=>{}),{fill:$,stroke:y}=h;return(S,P,F,K)=>Si(S,P,(G,M,V,L,le,N,ue,ne,de,te,O)=>{let ae=G.pxRound,H=n,X=o*we,q=c*we,he=d*we,J,Nt;L.ori==0?[J,Nt]=s(S,P):[Nt,J]=s(S,P);let Fe=L.dir*(L.ori==0?1:-1),ge=L.ori==0?qa:Hc,xe=L.ori==0?b:(B,Ae,it,Li,Jo,Un,qo)=>{b(B,Ae,it,Jo,Li,qo,Un)},ce=$e(S.bands,Wc).find(B=>B.series[0]==P),j=ce!=null?ce.dir:0,ot=G.fillTo(S,P,G.min,G.max,j),Lt=ae(ue(ot,le,O,de)),Ie,ye,kn,Ut=te,qe=ae(G.width*we),jn=!1,Xn=null,an=null,$o=null,Mi=null;$!=null&&(qe==0||y!=null)&&(jn=!0,Xn=$.values(S,P,F,K),an=new Map,new Set(Xn).forEach(B=>{B!=null&&an.set(B,new Path2D)}),qe>0&&($o=y.values(S,P,F,K),Mi=new Map,new Set($o).forEach(B=>{B!=null&&Mi.set(B,new Path2D)})));let{x0:Di,size:Es}=h;if(Di!=null&&Es!=null){H=1,M=Di.values(S,P,F,K),Di.unit==2&&(M=M.map(it=>S.posToVal(ne+it*te,L.key,!0)));let B=Es.values(S,P,F,K);Es.unit==2?ye=B[0]*te:ye=N(B[0],L,te,ne)-N(0,L,te,ne),Ut=$g(M,V,N,L,te,ne,Ut),kn=Ut-ye+X}else Ut=$g(M,V,N,L,te,ne,Ut),kn=Ut*r+X,ye=Ut-kn;kn<1&&(kn=0),qe>=ye/2&&(qe=0),kn<5&&(ae=Pg);let Sr=kn>0,jo=Ut-kn-(Sr?qe:0);ye=ae(kc(jo,he,q)),Ie=(H==0?ye/2:H==Fe?0:ye)-H*Fe*((H==0?X/2:0)+(Sr?qe/2:0));let Ot={stroke:null,fill:null,clip:null,band:null,gaps:null,flags:0},Ei=jn?null:new Path2D,eo=null;if(ce!=null)eo=S.data[ce.series[1]];else{let{y0:B,y1:Ae}=h;B!=null&&Ae!=null&&(V=Ae.values(S,P,F,K),eo=B.values(S,P,F,K))}let Uo=J*ye,ie=Nt*ye;for(let B=Fe==1?F:K;B>=F&&B<=K;B+=Fe){let Ae=V[B];if(Ae==null)continue;if(eo!=null){let zt=eo[B]??0;if(Ae-zt==0)continue;Lt=ue(zt,le,O,de)}let it=L.distr!=2||h!=null?M[B]:B,Li=N(it,L,te,ne),Jo=ue($e(Ae,ot),le,O,de),Un=ae(Li-Ie),qo=ae(It(Jo,Lt)),Jt=ae(In(Jo,Lt)),ln=qo-Jt;if(Ae!=null){let zt=Ae<0?ie:Uo,xn=Ae<0?Uo:ie;jn?(qe>0&&$o[B]!=null&&ge(Mi.get($o[B]),Un,Jt+nn(qe/2),ye,It(0,ln-qe),zt,xn),Xn[B]!=null&&ge(an.get(Xn[B]),Un,Jt+nn(qe/2),ye,It(0,ln-qe),zt,xn)):ge(Ei,Un,Jt+nn(qe/2),ye,It(0,ln-qe),zt,xn),xe(S,P,B,Un-qe/2,Jt,ye+qe,ln)}}return qe>0?Ot.stroke=jn?Mi:Ei:jn||(Ot._fill=G.width==0?G._fill:G._stroke??G._fill,Ot.width=0),Ot.fill=jn?an:Ei,Ot})}function vk(e,t){let n=$e(t?.alignGaps,0);return(o,i,s,r)=>Si(o,i,(c,d,h,b,$,y,S,P,F,K,G)=>{[s,r]=Ia(h,s,r);let M=c.pxRound,V=J=>M(y(J,b,K,P)),L=J=>M(S(J,$,G,F)),le,N,ue;b.ori==0?(le=Ua,ue=Ts,N=e_):(le=Ja,ue=Ss,N=t_);let ne=b.dir*(b.ori==0?1:-1),de=V(d[ne==1?s:r]),te=de,O=[],ae=[];for(let J=ne==1?s:r;J>=s&&J<=r;J+=ne)if(h[J]!=null){let Fe=d[J],ge=V(Fe);O.push(te=ge),ae.push(L(h[J]))}let H={stroke:e(O,ae,le,ue,N,M),fill:null,clip:null,band:null,gaps:null,flags:ks},X=H.stroke,[q,he]=Nc(o,i);if(c.fill!=null||q!=0){let J=H.fill=new Path2D(X),Nt=c.fillTo(o,i,c.min,c.max,q),Fe=L(Nt);ue(J,te,Fe),ue(J,de,Fe)}if(!c.spanGaps){let J=[];J.push(...zc(d,h,s,r,ne,V,n)),H.gaps=J=c.gaps(o,i,s,r,J),H.clip=ja(J,b.ori,P,F,K,G)}return he!=0&&(H.band=he==2?[go(o,i,s,r,X,-1),go(o,i,s,r,X,1)]:go(o,i,s,r,X,he)),H})}function kk(e){return vk(xk,e)}function xk(e,t,n,o,i,s){let r=e.length;if(r<2)return null;let c=new Path2D;if(n(c,e[0],t[0]),r==2)o(c,e[1],t[1]);else{let d=Array(r),h=Array(r-1),b=Array(r-1),$=Array(r-1);for(let y=0;y<r-1;y++)b[y]=t[y+1]-t[y],$[y]=e[y+1]-e[y],h[y]=b[y]/$[y];d[0]=h[0];for(let y=1;y<r-1;y++)h[y]===0||h[y-1]===0||h[y-1]>0!=h[y]>0?d[y]=0:(d[y]=3*($[y-1]+$[y])/((2*$[y]+$[y-1])/h[y-1]+($[y]+2*$[y-1])/h[y]),isFinite(d[y])||(d[y]=0));d[r-1]=h[r-2];for(let y=0;y<r-1;y++)i(c,e[y]+$[y]/3,t[y]+d[y]*$[y]/3,e[y+1]-$[y]/3,t[y+1]-d[y+1]*$[y]/3,e[y+1],t[y+1])}return c}var Pc=new Set;function bg(){for(let e of Pc)e.syncRect(!0)}xs&&(xi(i0,bs,bg),xi(s0,bs,bg,!0),xi(Ca,bs,()=>{xt.pxRatio=we}));var Tk=i_(),Sk=n_();function wg(e,t,n,o){return(o?[e[0],e[1]].concat(e.slice(2)):[e[0]].concat(e.slice(1))).map((s,r)=>Rc(s,r,t,n))}function Pk(e,t){return e.map((n,o)=>o==0?{}:nt({},t,n))}function Rc(e,t,n,o){return nt({},t==0?n:o,e)}function s_(e,t,n){return t==null?ys:[t,n]}var Rk=s_;function Ak(e,t,n){return t==null?ys:Ba(t,n,Lc,!0)}function r_(e,t,n,o){return t==null?ys:Na(t,n,e.scales[o].log,!1)}var Mk=r_;function a_(e,t,n,o){return t==null?ys:Ec(t,n,e.scales[o].log,!1)}var Dk=a_;function Ek(e,t,n,o,i){let s=It(Qh(e),Qh(t)),r=t-e,c=Fn(i/o*r,n);do{let d=n[c],h=o*d/r;if(h>=i&&s+(d<5?Io.get(d):0)<=17)return[d,h]}while(++c<n.length);return[0,0]}function yg(e){let t,n;return e=e.replace(/(\d+)px/,(o,i)=>(t=at((n=+i)*we))+"px"),[e,t,n]}function Lk(e){e.show&&[e.font,e.labelFont].forEach(t=>{let n=Re(t[2]*we,1);t[0]=t[0].replace(/[0-9.]+px/,n+"px"),t[1]=n})}function xt(e,t,n){let o={mode:$e(e.mode,1)},i=o.mode;function s(l,p,m,g){let _=p.valToPct(l);return g+m*(p.dir==-1?1-_:_)}function r(l,p,m,g){let _=p.valToPct(l);return g+m*(p.dir==-1?_:1-_)}function c(l,p,m,g){return p.ori==0?s(l,p,m,g):r(l,p,m,g)}o.valToPosH=s,o.valToPosV=r;let d=!1;o.status=0;let h=o.root=yn(Nv);if(e.id!=null&&(h.id=e.id),tn(h,e.class),e.title){let l=yn(jv,h);l.textContent=e.title}let b=Bn("canvas"),$=o.ctx=b.getContext("2d"),y=yn(Uv,h);xi("click",y,l=>{l.target===P&&(Oe!=Ui||Ne!=Ji)&&yt.click(o,l)},!0);let S=o.under=yn(Jv,y);y.appendChild(b);let P=o.over=yn(qv,y);e=vs(e);let F=+$e(e.pxAlign,1),K=_g(F);(e.plugins||[]).forEach(l=>{l.opts&&(e=l.opts(o,e)||e)});let G=e.ms||.001,M=o.series=i==1?wg(e.series||[],cg,hg,!1):Pk(e.series||[null],fg),V=o.axes=wg(e.axes||[],ug,dg,!0),L=o.scales={},le=o.bands=e.bands||[];le.forEach(l=>{l.fill=fe(l.fill||null),l.dir=$e(l.dir,-1)});let N=i==2?M[1].facets[0].scale:M[0].scale,ue={axes:M$,series:T$},ne=(e.drawOrder||["axes","series"]).map(l=>ue[l]);function de(l){let p=l.distr==3?m=>ho(m>0?m:l.clamp(o,m,l.min,l.max,l.key)):l.distr==4?m=>hc(m,l.asinh):l.distr==100?m=>l.fwd(m):m=>m;return m=>{let g=p(m),{_min:_,_max:w}=l,k=w-_;return(g-_)/k}}function te(l){let p=L[l];if(p==null){let m=(e.scales||wr)[l]||wr;if(m.from!=null){te(m.from);let g=nt({},L[m.from],m,{key:l});g.valToPct=de(g),L[l]=g}else{p=L[l]=nt({},l==N?Gg:hk,m),p.key=l;let g=p.time,_=p.range,w=Fo(_);if((l!=N||i==2&&!g)&&(w&&(_[0]==null||_[1]==null)&&(_={min:_[0]==null?Gh:{mode:1,hard:_[0],soft:_[0]},max:_[1]==null?Gh:{mode:1,hard:_[1],soft:_[1]}},w=!1),!w&&Ha(_))){let k=_;_=(x,R,W)=>R==null?ys:Ba(R,W,k)}p.range=fe(_||(g?Rk:l==N?p.distr==3?Mk:p.distr==4?Dk:s_:p.distr==3?r_:p.distr==4?a_:Ak)),p.auto=fe(w?!1:p.auto),p.clamp=fe(p.clamp||fk),p._min=p._max=null,p.valToPct=de(p)}}}te("x"),te("y"),i==1&&M.forEach(l=>{te(l.scale)}),V.forEach(l=>{te(l.scale)});for(let l in e.scales)te(l);let O=L[N],ae=O.distr,H,X;O.ori==0?(tn(h,zv),H=s,X=r):(tn(h,Hv),H=r,X=s);let q={};for(let l in L){let p=L[l];(p.min!=null||p.max!=null)&&(q[l]={min:p.min,max:p.max},p.min=p.max=null)}let he=e.tzDate||(l=>new Date(at(l/G))),J=e.fmtDate||Cc,Nt=G==1?z0(he):U0(he),Fe=rg(he,sg(G==1?N0:j0,J)),ge=lg(he,ag(q0,J)),xe=[],ce=o.legend=nt({},G0,e.legend),j=o.cursor=nt({},tk,{drag:{y:i==2}},e.cursor),ot=ce.show,Lt=j.show,Ie=ce.markers;ce.idxs=xe,Ie.width=fe(Ie.width),Ie.dash=fe(Ie.dash),Ie.stroke=fe(Ie.stroke),Ie.fill=fe(Ie.fill);let ye,kn,Ut,qe=[],jn=[],Xn,an=!1,$o={};if(ce.live){let l=M[1]?M[1].values:null;an=l!=null,Xn=an?l(o,1,0):{_:0};for(let p in Xn)$o[p]=Mc}if(ot)if(ye=Bn("table",Qv,h),Ut=Bn("tbody",null,ye),ce.mount(o,ye),an){kn=Bn("thead",null,ye,Ut);let l=Bn("tr",null,kn);Bn("th",null,l);for(var Mi in Xn)Bn("th",Ch,l).textContent=Mi}else tn(ye,e0),ce.live&&tn(ye,Xv);let Di={show:!0},Es={show:!1};function Sr(l,p){if(p==0&&(an||!ce.live||i==2))return ys;let m=[],g=Bn("tr",t0,Ut,Ut.childNodes[p]);tn(g,l.class),l.show||tn(g,ki);let _=Bn("th",null,g);if(Ie.show){let x=yn(n0,_);if(p>0){let R=Ie.width(o,p);R&&(x.style.border=R+"px "+Ie.dash(o,p)+" "+Ie.stroke(o,p)),x.style.background=Ie.fill(o,p)}}let w=yn(Ch,_);l.label instanceof HTMLElement?w.appendChild(l.label):w.textContent=l.label,p>0&&(Ie.show||(w.style.color=l.width>0?Ie.stroke(o,p):Ie.fill(o,p)),Ot("click",_,x=>{if(j._lock)return;Ko(x);let R=M.indexOf(l);if((x.ctrlKey||x.metaKey)!=ce.isolate){let W=M.some((C,I)=>I>0&&I!=R&&C.show);M.forEach((C,I)=>{I>0&&qn(I,W?I==R?Di:Es:Di,!0,Qe.setSeries)})}else qn(R,{show:!l.show},!0,Qe.setSeries)},!1),Wi&&Ot(Nh,_,x=>{j._lock||(Ko(x),qn(M.indexOf(l),Vi,!0,Qe.setSeries))},!1));for(var k in Xn){let x=Bn("td",o0,g);x.textContent="--",m.push(x)}return[g,m]}let jo=new Map;function Ot(l,p,m,g=!0){let _=jo.get(p)||{},w=j.bind[l](o,p,m,g);w&&(xi(l,p,_[l]=w),jo.set(p,_))}function Ei(l,p,m){let g=jo.get(p)||{};for(let _ in g)(l==null||_==l)&&(vc(_,p,g[_]),delete g[_]);l==null&&jo.delete(p)}let eo=0,Uo=0,ie=0,B=0,Ae=0,it=0,Li=Ae,Jo=it,Un=ie,qo=B,Jt=0,ln=0,zt=0,xn=0;o.bbox={};let gl=!1,Pr=!1,Oi=!1,Vo=!1,Rr=!1,un=!1;function _l(l,p,m){(m||l!=o.width||p!=o.height)&&xp(l,p),Ni(!1),Oi=!0,Pr=!0,zi()}function xp(l,p){o.width=eo=ie=l,o.height=Uo=B=p,Ae=it=0,$$(),b$();let m=o.bbox;Jt=m.left=yi(Ae*we,.5),ln=m.top=yi(it*we,.5),zt=m.width=yi(ie*we,.5),xn=m.height=yi(B*we,.5)}let h$=3;function g$(){let l=!1,p=0;for(;!l;){p++;let m=R$(p),g=A$(p);l=p==h$||m&&g,l||(xp(o.width,o.height),Pr=!0)}}function _$({width:l,height:p}){_l(l,p)}o.setSize=_$;function $$(){let l=!1,p=!1,m=!1,g=!1;V.forEach((_,w)=>{if(_.show&&_._show){let{side:k,_size:x}=_,R=k%2,W=_.label!=null?_.labelSize:0,C=x+W;C>0&&(R?(ie-=C,k==3?(Ae+=C,g=!0):m=!0):(B-=C,k==0?(it+=C,l=!0):p=!0))}}),Go[0]=l,Go[1]=m,Go[2]=p,Go[3]=g,ie-=bo[1]+bo[3],Ae+=bo[3],B-=bo[2]+bo[0],it+=bo[0]}function b$(){let l=Ae+ie,p=it+B,m=Ae,g=it;function _(w,k){switch(w){case 1:return l+=k,l-k;case 2:return p+=k,p-k;case 3:return m-=k,m+k;case 0:return g-=k,g+k}}V.forEach((w,k)=>{if(w.show&&w._show){let x=w.side;w._pos=_(x,w._size),w.label!=null&&(w._lpos=_(x,w.labelSize))}})}if(j.dataIdx==null){let l=j.hover,p=l.skip=new Set(l.skip??[]);p.add(void 0);let m=l.prox=fe(l.prox),g=l.bias??=0;j.dataIdx=(_,w,k,x)=>{if(w==0)return k;let R=k,W=m(_,w,k,x)??Pe,C=W>=0&&W<Pe,I=O.ori==0?ie:B,ee=j.left,be=t[0],_e=t[w];if(p.has(_e[k])){R=null;let pe=null,Y=null,U;if(g==0||g==-1)for(U=k;pe==null&&U-- >0;)p.has(_e[U])||(pe=U);if(g==0||g==1)for(U=k;Y==null&&U++<_e.length;)p.has(_e[U])||(Y=U);if(pe!=null||Y!=null)if(C){let Ce=pe==null?-1/0:H(be[pe],O,I,0),Ke=Y==null?1/0:H(be[Y],O,I,0),ht=ee-Ce,Te=Ke-ee;ht<=Te?ht<=W&&(R=pe):Te<=W&&(R=Y)}else R=Y==null?pe:pe==null?Y:k-pe<=Y-k?pe:Y}else C&&lt(ee-H(be[k],O,I,0))>W&&(R=null);return R}}let Ko=l=>{j.event=l};j.idxs=xe,j._lock=!1;let Tt=j.points;Tt.show=fe(Tt.show),Tt.size=fe(Tt.size),Tt.stroke=fe(Tt.stroke),Tt.width=fe(Tt.width),Tt.fill=fe(Tt.fill);let Jn=o.focus=nt({},e.focus||{alpha:.3},j.focus),Wi=Jn.prox>=0,Ci=Wi&&Tt.one,cn=[],Bi=[],Fi=[];function Tp(l,p){let m=Tt.show(o,p);if(m instanceof HTMLElement)return tn(m,Zv),tn(m,l.class),Qn(m,-10,-10,ie,B),P.insertBefore(m,cn[p]),m}function Sp(l,p){if(i==1||p>0){let m=i==1&&L[l.scale].time,g=l.value;l.value=m?tg(g)?lg(he,ag(g,J)):g||ge:g||pk,l.label=l.label||(m?ok:nk)}if(Ci||p>0){l.width=l.width==null?1:l.width,l.paths=l.paths||Tk||h0,l.fillTo=fe(l.fillTo||gk),l.pxAlign=+$e(l.pxAlign,F),l.pxRound=_g(l.pxAlign),l.stroke=fe(l.stroke||null),l.fill=fe(l.fill||null),l._stroke=l._fill=l._paths=l._focus=null;let m=dk(It(1,l.width),1),g=l.points=nt({},{size:m,width:It(1,m*.2),stroke:l.stroke,space:m*2,paths:Sk,_stroke:null,_fill:null},l.points);g.show=fe(g.show),g.filter=fe(g.filter),g.fill=fe(g.fill),g.stroke=fe(g.stroke),g.paths=fe(g.paths),g.pxAlign=l.pxAlign}if(ot){let m=Sr(l,p);qe.splice(p,0,m[0]),jn.splice(p,0,m[1]),ce.values.push(null)}if(Lt){xe.splice(p,0,null);let m=null;Ci?p==0&&(m=Tp(l,p)):p>0&&(m=Tp(l,p)),cn.splice(p,0,m),Bi.splice(p,0,0),Fi.splice(p,0,0)}ft("addSeries",p)}function w$(l,p){p=p??M.length,l=i==1?Rc(l,p,cg,hg):Rc(l,p,{},fg),M.splice(p,0,l),Sp(M[p],p)}o.addSeries=w$;function y$(l){if(M.splice(l,1),ot){ce.values.splice(l,1),jn.splice(l,1);let p=qe.splice(l,1)[0];Ei(null,p.firstChild),p.remove()}Lt&&(xe.splice(l,1),cn.splice(l,1)[0].remove(),Bi.splice(l,1),Fi.splice(l,1)),ft("delSeries",l)}o.delSeries=y$;let Go=[!1,!1,!1,!1];function v$(l,p){if(l._show=l.show,l.show){let m=l.side%2,g=L[l.scale];g==null&&(l.scale=m?M[1].scale:N,g=L[l.scale]);let _=g.time;l.size=fe(l.size),l.space=fe(l.space),l.rotate=fe(l.rotate),Fo(l.incrs)&&l.incrs.forEach(k=>{!Io.has(k)&&Io.set(k,Mg(k))}),l.incrs=fe(l.incrs||(g.distr==2?B0:_?G==1?I0:H0:vi)),l.splits=fe(l.splits||(_&&g.distr==1?Nt:g.distr==3?xc:g.distr==4?rk:sk)),l.stroke=fe(l.stroke),l.grid.stroke=fe(l.grid.stroke),l.ticks.stroke=fe(l.ticks.stroke),l.border.stroke=fe(l.border.stroke);let w=l.values;l.values=Fo(w)&&!Fo(w[0])?fe(w):_?Fo(w)?rg(he,sg(w,J)):tg(w)?J0(he,w):w||Fe:w||ik,l.filter=fe(l.filter||(g.distr>=3&&g.log==10?uk:g.distr==3&&g.log==2?ck:Rg)),l.font=yg(l.font),l.labelFont=yg(l.labelFont),l._size=l.size(o,null,p,0),l._space=l._rotate=l._incrs=l._found=l._splits=l._values=null,l._size>0&&(Go[p]=!0,l._el=yn(Vv,y))}}function Ls(l,p,m,g){let[_,w,k,x]=m,R=p%2,W=0;return R==0&&(x||w)&&(W=p==0&&!_||p==2&&!k?at(ug.size/3):0),R==1&&(_||k)&&(W=p==1&&!w||p==3&&!x?at(dg.size/2):0),W}let Pp=o.padding=(e.padding||[Ls,Ls,Ls,Ls]).map(l=>fe($e(l,Ls))),bo=o._padding=Pp.map((l,p)=>l(o,p,Go,0)),wt,ct=null,pt=null,Ar=i==1?M[0].idxs:null,Tn=null,Os=!1;function Rp(l,p){if(t=l??[],o.data=o._data=t,i==2){wt=0;for(let m=1;m<M.length;m++)wt+=t[m][0].length}else{t.length==0&&(o.data=o._data=t=[[]]),Tn=t[0],wt=Tn.length;let m=t;if(ae==2){m=t.slice();let g=m[0]=Array(wt);for(let _=0;_<wt;_++)g[_]=_}o._data=t=m}if(Ni(!0),ft("setData"),ae==2&&(Oi=!0),p!==!1){let m=O;m.auto(o,Os)?$l():yo(N,m.min,m.max),Vo=Vo||j.left>=0,un=!0,zi()}}o.setData=Rp;function $l(){Os=!0;let l,p;i==1&&(wt>0?(ct=Ar[0]=0,pt=Ar[1]=wt-1,l=t[0][ct],p=t[0][pt],ae==2?(l=ct,p=pt):l==p&&(ae==3?[l,p]=Na(l,l,O.log,!1):ae==4?[l,p]=Ec(l,l,O.log,!1):O.time?p=l+at(86400/G):[l,p]=Ba(l,p,Lc,!0))):(ct=Ar[0]=l=null,pt=Ar[1]=p=null)),yo(N,l,p)}let Mr,Ii,bl,wl,yl,vl,kl,xl,Tl,Ht;function Ap(l,p,m,g,_,w){l??=Fh,m??=Wc,g??="butt",_??=Fh,w??="round",l!=Mr&&($.strokeStyle=Mr=l),_!=Ii&&($.fillStyle=Ii=_),p!=bl&&($.lineWidth=bl=p),w!=yl&&($.lineJoin=yl=w),g!=vl&&($.lineCap=vl=g),m!=wl&&$.setLineDash(wl=m)}function Mp(l,p,m,g){p!=Ii&&($.fillStyle=Ii=p),l!=kl&&($.font=kl=l),m!=xl&&($.textAlign=xl=m),g!=Tl&&($.textBaseline=Tl=g)}function Sl(l,p,m,g,_=0){if(g.length>0&&l.auto(o,Os)&&(p==null||p.min==null)){let w=$e(ct,0),k=$e(pt,g.length-1),x=m.min==null?u0(g,w,k,_,l.distr==3):[m.min,m.max];l.min=In(l.min,m.min=x[0]),l.max=It(l.max,m.max=x[1])}}let Dp={min:null,max:null};function k$(){for(let g in L){let _=L[g];q[g]==null&&(_.min==null||q[N]!=null&&_.auto(o,Os))&&(q[g]=Dp)}for(let g in L){let _=L[g];q[g]==null&&_.from!=null&&q[_.from]!=null&&(q[g]=Dp)}q[N]!=null&&Ni(!0);let l={};for(let g in q){let _=q[g];if(_!=null){let w=l[g]=vs(L[g],$0);if(_.min!=null)nt(w,_);else if(g!=N||i==2)if(wt==0&&w.from==null){let k=w.range(o,null,null,g);w.min=k[0],w.max=k[1]}else w.min=Pe,w.max=-Pe}}if(wt>0){M.forEach((g,_)=>{if(i==1){let w=g.scale,k=q[w];if(k==null)return;let x=l[w];if(_==0){let R=x.range(o,x.min,x.max,w);x.min=R[0],x.max=R[1],ct=Fn(x.min,t[0]),pt=Fn(x.max,t[0]),pt-ct>1&&(t[0][ct]<x.min&&ct++,t[0][pt]>x.max&&pt--),g.min=Tn[ct],g.max=Tn[pt]}else g.show&&g.auto&&Sl(x,k,g,t[_],g.sorted);g.idxs[0]=ct,g.idxs[1]=pt}else if(_>0&&g.show&&g.auto){let[w,k]=g.facets,x=w.scale,R=k.scale,[W,C]=t[_],I=l[x],ee=l[R];I!=null&&Sl(I,q[x],w,W,w.sorted),ee!=null&&Sl(ee,q[R],k,C,k.sorted),g.min=k.min,g.max=k.max}});for(let g in l){let _=l[g],w=q[g];if(_.from==null&&(w==null||w.min==null)){let k=_.range(o,_.min==Pe?null:_.min,_.max==-Pe?null:_.max,g);_.min=k[0],_.max=k[1]}}}for(let g in l){let _=l[g];if(_.from!=null){let w=l[_.from];if(w.min==null)_.min=_.max=null;else{let k=_.range(o,w.min,w.max,g);_.min=k[0],_.max=k[1]}}}let p={},m=!1;for(let g in l){let _=l[g],w=L[g];if(w.min!=_.min||w.max!=_.max){w.min=_.min,w.max=_.max;let k=w.distr;w._min=k==3?ho(w.min):k==4?hc(w.min,w.asinh):k==100?w.fwd(w.min):w.min,w._max=k==3?ho(w.max):k==4?hc(w.max,w.asinh):k==100?w.fwd(w.max):w.max,p[g]=m=!0}}if(m){M.forEach((g,_)=>{i==2?_>0&&p.y&&(g._paths=null):p[g.scale]&&(g._paths=null)});for(let g in p)Oi=!0,ft("setScale",g);Lt&&j.left>=0&&(Vo=un=!0)}for(let g in q)q[g]=null}function x$(l){let p=kc(ct-1,0,wt-1),m=kc(pt+1,0,wt-1);for(;l[p]==null&&p>0;)p--;for(;l[m]==null&&m<wt-1;)m++;return[p,m]}function T$(){if(wt>0){let l=M.some(p=>p._focus)&&Ht!=Jn.alpha;l&&($.globalAlpha=Ht=Jn.alpha),M.forEach((p,m)=>{if(m>0&&p.show&&(Ep(m,!1),Ep(m,!0),p._paths==null)){let g=Ht;Ht!=p.alpha&&($.globalAlpha=Ht=p.alpha);let _=i==2?[0,t[m][0].length-1]:x$(t[m]);p._paths=p.paths(o,m,_[0],_[1]),Ht!=g&&($.globalAlpha=Ht=g)}}),M.forEach((p,m)=>{if(m>0&&p.show){let g=Ht;Ht!=p.alpha&&($.globalAlpha=Ht=p.alpha),p._paths!=null&&Lp(m,!1);{let _=p._paths!=null?p._paths.gaps:null,w=p.points.show(o,m,ct,pt,_),k=p.points.filter(o,m,w,_);(w||k)&&(p.points._paths=p.points.paths(o,m,ct,pt,k),Lp(m,!0))}Ht!=g&&($.globalAlpha=Ht=g),ft("drawSeries",m)}}),l&&($.globalAlpha=Ht=1)}}function Ep(l,p){let m=p?M[l].points:M[l];m._stroke=m.stroke(o,l),m._fill=m.fill(o,l)}function Lp(l,p){let m=p?M[l].points:M[l],{stroke:g,fill:_,clip:w,flags:k,_stroke:x=m._stroke,_fill:R=m._fill,_width:W=m.width}=m._paths;W=Re(W*we,3);let C=null,I=W%2/2;p&&R==null&&(R=W>0?"#fff":x);let ee=m.pxAlign==1&&I>0;if(ee&&$.translate(I,I),!p){let be=Jt-W/2,_e=ln-W/2,pe=zt+W,Y=xn+W;C=new Path2D,C.rect(be,_e,pe,Y)}p?Pl(x,W,m.dash,m.cap,R,g,_,k,w):S$(l,x,W,m.dash,m.cap,R,g,_,k,C,w),ee&&$.translate(-I,-I)}function S$(l,p,m,g,_,w,k,x,R,W,C){let I=!1;R!=0&&le.forEach((ee,be)=>{if(ee.series[0]==l){let _e=M[ee.series[1]],pe=t[ee.series[1]],Y=(_e._paths||wr).band;Fo(Y)&&(Y=ee.dir==1?Y[0]:Y[1]);let U,Ce=null;_e.show&&Y&&p0(pe,ct,pt)?(Ce=ee.fill(o,be)||w,U=_e._paths.clip):Y=null,Pl(p,m,g,_,Ce,k,x,R,W,C,U,Y),I=!0}}),I||Pl(p,m,g,_,w,k,x,R,W,C)}let Op=ks|Sc;function Pl(l,p,m,g,_,w,k,x,R,W,C,I){Ap(l,p,m,g,_),(R||W||I)&&($.save(),R&&$.clip(R),W&&$.clip(W)),I?(x&Op)==Op?($.clip(I),C&&$.clip(C),Er(_,k),Dr(l,w,p)):x&Sc?(Er(_,k),$.clip(I),Dr(l,w,p)):x&ks&&($.save(),$.clip(I),C&&$.clip(C),Er(_,k),$.restore(),Dr(l,w,p)):(Er(_,k),Dr(l,w,p)),(R||W||I)&&$.restore()}function Dr(l,p,m){m>0&&(p instanceof Map?p.forEach((g,_)=>{$.strokeStyle=Mr=_,$.stroke(g)}):p!=null&&l&&$.stroke(p))}function Er(l,p){p instanceof Map?p.forEach((m,g)=>{$.fillStyle=Ii=g,$.fill(m)}):p!=null&&l&&$.fill(p)}function P$(l,p,m,g){let _=V[l],w;if(g<=0)w=[0,0];else{let k=_._space=_.space(o,l,p,m,g),x=_._incrs=_.incrs(o,l,p,m,g,k);w=Ek(p,m,x,g,k)}return _._found=w}function Rl(l,p,m,g,_,w,k,x,R,W){let C=k%2/2;F==1&&$.translate(C,C),Ap(x,k,R,W,x),$.beginPath();let I,ee,be,_e,pe=_+(g==0||g==3?-w:w);m==0?(ee=_,_e=pe):(I=_,be=pe);for(let Y=0;Y<l.length;Y++)p[Y]!=null&&(m==0?I=be=l[Y]:ee=_e=l[Y],$.moveTo(I,ee),$.lineTo(be,_e));$.stroke(),F==1&&$.translate(-C,-C)}function R$(l){let p=!0;return V.forEach((m,g)=>{if(!m.show)return;let _=L[m.scale];if(_.min==null){m._show&&(p=!1,m._show=!1,Ni(!1));return}else m._show||(p=!1,m._show=!0,Ni(!1));let w=m.side,k=w%2,{min:x,max:R}=_,[W,C]=P$(g,x,R,k==0?ie:B);if(C==0)return;let I=_.distr==2,ee=m._splits=m.splits(o,g,x,R,W,C,I),be=_.distr==2?ee.map(U=>Tn[U]):ee,_e=_.distr==2?Tn[ee[1]]-Tn[ee[0]]:W,pe=m._values=m.values(o,m.filter(o,be,g,C,_e),g,C,_e);m._rotate=w==2?m.rotate(o,pe,g,C):0;let Y=m._size;m._size=vn(m.size(o,pe,g,l)),Y!=null&&m._size!=Y&&(p=!1)}),p}function A$(l){let p=!0;return Pp.forEach((m,g)=>{let _=m(o,g,Go,l);_!=bo[g]&&(p=!1),bo[g]=_}),p}function M$(){for(let l=0;l<V.length;l++){let p=V[l];if(!p.show||!p._show)continue;let m=p.side,g=m%2,_,w,k=p.stroke(o,l),x=m==0||m==3?-1:1,[R,W]=p._found;if(p.label!=null){let Ct=p.labelGap*x,Kt=at((p._lpos+Ct)*we);Mp(p.labelFont[0],k,"center",m==2?"top":Bh),$.save(),g==1?(_=w=0,$.translate(Kt,at(ln+xn/2)),$.rotate((m==3?-Wa:Wa)/2)):(_=at(Jt+zt/2),w=Kt);let Qo=Sg(p.label)?p.label(o,l,R,W):p.label;$.fillText(Qo,_,w),$.restore()}if(W==0)continue;let C=L[p.scale],I=g==0?zt:xn,ee=g==0?Jt:ln,be=p._splits,_e=C.distr==2?be.map(Ct=>Tn[Ct]):be,pe=C.distr==2?Tn[be[1]]-Tn[be[0]]:R,Y=p.ticks,U=p.border,Ce=Y.show?Y.size:0,Ke=at(Ce*we),ht=at((p.alignTo==2?p._size-Ce-p.gap:p.gap)*we),Te=p._rotate*-Wa/180,Ge=K(p._pos*we),qt=(Ke+ht)*x,Wt=Ge+qt;w=g==0?Wt:0,_=g==1?Wt:0;let pn=p.font[0],Sn=p.align==1?_s:p.align==2?dc:Te>0?_s:Te<0?dc:g==0?"center":m==3?dc:_s,Kn=Te||g==1?"middle":m==2?"top":Bh;Mp(pn,k,Sn,Kn);let Vt=p.font[1]*p.lineGap,dn=be.map(Ct=>K(c(Ct,C,I,ee))),Pn=p._values;for(let Ct=0;Ct<Pn.length;Ct++){let Kt=Pn[Ct];if(Kt!=null){g==0?_=dn[Ct]:w=dn[Ct],Kt=""+Kt;let Qo=Kt.indexOf(`
`)==-1?[Kt]:Kt.split(/\n/gm);for(let Bt=0;Bt<Qo.length;Bt++){let Xp=Qo[Bt];Te?($.save(),$.translate(_,w+Bt*Vt),$.rotate(Te),$.fillText(Xp,0,0),$.restore()):$.fillText(Xp,_,w+Bt*Vt)}}}Y.show&&Rl(dn,Y.filter(o,_e,l,W,pe),g,m,Ge,Ke,Re(Y.width*we,3),Y.stroke(o,l),Y.dash,Y.cap);let Gn=p.grid;Gn.show&&Rl(dn,Gn.filter(o,_e,l,W,pe),g,g==0?2:1,g==0?ln:Jt,g==0?xn:zt,Re(Gn.width*we,3),Gn.stroke(o,l),Gn.dash,Gn.cap),U.show&&Rl([Ge],[1],g==0?1:0,g==0?1:2,g==1?ln:Jt,g==1?xn:zt,Re(U.width*we,3),U.stroke(o,l),U.dash,U.cap)}ft("drawAxes")}function Ni(l){M.forEach((p,m)=>{m>0&&(p._paths=null,l&&(i==1?(p.min=null,p.max=null):p.facets.forEach(g=>{g.min=null,g.max=null})))})}let Lr=!1,Al=!1,Ws=[];function D$(){Al=!1;for(let l=0;l<Ws.length;l++)ft(...Ws[l]);Ws.length=0}function zi(){Lr||(T0(Wp),Lr=!0)}function E$(l,p=!1){Lr=!0,Al=p,l(o),Wp(),p&&Ws.length>0&&queueMicrotask(D$)}o.batch=E$;function Wp(){if(gl&&(k$(),gl=!1),Oi&&(g$(),Oi=!1),Pr){if(Be(S,_s,Ae),Be(S,"top",it),Be(S,gr,ie),Be(S,_r,B),Be(P,_s,Ae),Be(P,"top",it),Be(P,gr,ie),Be(P,_r,B),Be(y,gr,eo),Be(y,_r,Uo),b.width=at(eo*we),b.height=at(Uo*we),V.forEach(({_el:l,_show:p,_size:m,_pos:g,side:_})=>{if(l!=null)if(p){let w=_===3||_===0?m:0,k=_%2==1;Be(l,k?"left":"top",g-w),Be(l,k?"width":"height",m),Be(l,k?"top":"left",k?it:Ae),Be(l,k?"height":"width",k?B:ie),yc(l,ki)}else tn(l,ki)}),Mr=Ii=bl=yl=vl=kl=xl=Tl=wl=null,Ht=1,Fs(!0),Ae!=Li||it!=Jo||ie!=Un||B!=qo){Ni(!1);let l=ie/Un,p=B/qo;if(Lt&&!Vo&&j.left>=0){j.left*=l,j.top*=p,Hi&&Qn(Hi,at(j.left),0,ie,B),ji&&Qn(ji,0,at(j.top),ie,B);for(let m=0;m<cn.length;m++){let g=cn[m];g!=null&&(Bi[m]*=l,Fi[m]*=p,Qn(g,vn(Bi[m]),vn(Fi[m]),ie,B))}}if(We.show&&!Rr&&We.left>=0&&We.width>0){We.left*=l,We.width*=l,We.top*=p,We.height*=p;for(let m in Wl)Be(qi,m,We[m])}Li=Ae,Jo=it,Un=ie,qo=B}ft("setSize"),Pr=!1}eo>0&&Uo>0&&($.clearRect(0,0,b.width,b.height),ft("drawClear"),ne.forEach(l=>l()),ft("draw")),We.show&&Rr&&(Or(We),Rr=!1),Lt&&Vo&&(Zo(null,!0,!1),Vo=!1),ce.show&&ce.live&&un&&(Ll(),un=!1),d||(d=!0,o.status=1,ft("ready")),Os=!1,Lr=!1}o.redraw=(l,p)=>{Oi=p||!1,l!==!1?yo(N,O.min,O.max):zi()};function Ml(l,p){let m=L[l];if(m.from==null){if(wt==0){let g=m.range(o,p.min,p.max,l);p.min=g[0],p.max=g[1]}if(p.min>p.max){let g=p.min;p.min=p.max,p.max=g}if(wt>1&&p.min!=null&&p.max!=null&&p.max-p.min<1e-16)return;l==N&&m.distr==2&&wt>0&&(p.min=Fn(p.min,t[0]),p.max=Fn(p.max,t[0]),p.min==p.max&&p.max++),q[l]=p,gl=!0,zi()}}o.setScale=Ml;let Dl,El,Hi,ji,Cp,Bp,Ui,Ji,Fp,Ip,Oe,Ne,wo=!1,yt=j.drag,dt=yt.x,mt=yt.y;Lt&&(j.x&&(Dl=yn(Gv,P)),j.y&&(El=yn(Yv,P)),O.ori==0?(Hi=Dl,ji=El):(Hi=El,ji=Dl),Oe=j.left,Ne=j.top);let We=o.select=nt({show:!0,over:!0,left:0,width:0,top:0,height:0},e.select),qi=We.show?yn(Kv,We.over?P:S):null;function Or(l,p){if(We.show){for(let m in l)We[m]=l[m],m in Wl&&Be(qi,m,l[m]);p!==!1&&ft("setSelect")}}o.setSelect=Or;function L$(l){if(M[l].show)ot&&yc(qe[l],ki);else if(ot&&tn(qe[l],ki),Lt){let m=Ci?cn[0]:cn[l];m!=null&&Qn(m,-10,-10,ie,B)}}function yo(l,p,m){Ml(l,{min:p,max:m})}function qn(l,p,m,g){p.focus!=null&&F$(l),p.show!=null&&M.forEach((_,w)=>{w>0&&(l==w||l==null)&&(_.show=p.show,L$(w),i==2?(yo(_.facets[0].scale,null,null),yo(_.facets[1].scale,null,null)):yo(_.scale,null,null),zi())}),m!==!1&&ft("setSeries",l,p),g&&Is("setSeries",o,l,p)}o.setSeries=qn;function O$(l,p){nt(le[l],p)}function W$(l,p){l.fill=fe(l.fill||null),l.dir=$e(l.dir,-1),p=p??le.length,le.splice(p,0,l)}function C$(l){l==null?le.length=0:le.splice(l,1)}o.addBand=W$,o.setBand=O$,o.delBand=C$;function B$(l,p){M[l].alpha=p,Lt&&cn[l]!=null&&(cn[l].style.opacity=p),ot&&qe[l]&&(qe[l].style.opacity=p)}let to,vo,Yo,Vi={focus:!0};function F$(l){if(l!=Yo){let p=l==null,m=Jn.alpha!=1;M.forEach((g,_)=>{if(i==1||_>0){let w=p||_==0||_==l;g._focus=p?null:w,m&&B$(_,w?1:Jn.alpha)}}),Yo=l,m&&zi()}}ot&&Wi&&Ot(zh,ye,l=>{j._lock||(Ko(l),Yo!=null&&qn(null,Vi,!0,Qe.setSeries))});function Vn(l,p,m){let g=L[p];m&&(l=l/we-(g.ori==1?it:Ae));let _=ie;g.ori==1&&(_=B,l=_-l),g.dir==-1&&(l=_-l);let w=g._min,k=g._max,x=l/_,R=w+(k-w)*x,W=g.distr;return W==3?ws(10,R):W==4?m0(R,g.asinh):W==100?g.bwd(R):R}function I$(l,p){let m=Vn(l,N,p);return Fn(m,t[0],ct,pt)}o.valToIdx=l=>Fn(l,t[0]),o.posToIdx=I$,o.posToVal=Vn,o.valToPos=(l,p,m)=>L[p].ori==0?s(l,L[p],m?zt:ie,m?Jt:0):r(l,L[p],m?xn:B,m?ln:0),o.setCursor=(l,p,m)=>{Oe=l.left,Ne=l.top,Zo(null,p,m)};function Np(l,p){Be(qi,_s,We.left=l),Be(qi,gr,We.width=p)}function zp(l,p){Be(qi,"top",We.top=l),Be(qi,_r,We.height=p)}let Cs=O.ori==0?Np:zp,Bs=O.ori==1?Np:zp;function N$(){if(ot&&ce.live)for(let l=i==2?1:0;l<M.length;l++){if(l==0&&an)continue;let p=ce.values[l],m=0;for(let g in p)jn[l][m++].firstChild.nodeValue=p[g]}}function Ll(l,p){if(l!=null&&(l.idxs?l.idxs.forEach((m,g)=>{xe[g]=m}):_0(l.idx)||xe.fill(l.idx),ce.idx=xe[0]),ot&&ce.live){for(let m=0;m<M.length;m++)(m>0||i==1&&!an)&&z$(m,xe[m]);N$()}un=!1,p!==!1&&ft("setLegend")}o.setLegend=Ll;function z$(l,p){let m=M[l],g=l==0&&ae==2?Tn:t[l],_;an?_=m.values(o,l,p)??$o:(_=m.value(o,p==null?null:g[p],l,p),_=_==null?$o:{_}),ce.values[l]=_}function Zo(l,p,m){Fp=Oe,Ip=Ne,[Oe,Ne]=j.move(o,Oe,Ne),j.left=Oe,j.top=Ne,Lt&&(Hi&&Qn(Hi,at(Oe),0,ie,B),ji&&Qn(ji,0,at(Ne),ie,B));let g,_=ct>pt;to=Pe,vo=null;let w=O.ori==0?ie:B,k=O.ori==1?ie:B;if(Oe<0||wt==0||_){g=j.idx=null;for(let x=0;x<M.length;x++){let R=cn[x];R!=null&&Qn(R,-10,-10,ie,B)}Wi&&qn(null,Vi,!0,l==null&&Qe.setSeries),ce.live&&(xe.fill(g),un=!0)}else{let x,R,W;i==1&&(x=O.ori==0?Oe:Ne,R=Vn(x,N),g=j.idx=Fn(R,t[0],ct,pt),W=H(t[0][g],O,w,0));let C=-10,I=-10,ee=0,be=0,_e=!0,pe="",Y="";for(let U=i==2?1:0;U<M.length;U++){let Ce=M[U],Ke=xe[U],ht=Ke==null?null:i==1?t[U][Ke]:t[U][1][Ke],Te=j.dataIdx(o,U,g,R),Ge=Te==null?null:i==1?t[U][Te]:t[U][1][Te];if(un=un||Ge!=ht||Te!=Ke,xe[U]=Te,U>0&&Ce.show){let qt=Te==null?-10:Te==g?W:H(i==1?t[0][Te]:t[U][0][Te],O,w,0),Wt=Ge==null?-10:X(Ge,i==1?L[Ce.scale]:L[Ce.facets[1].scale],k,0);if(Wi&&Ge!=null){let pn=O.ori==1?Oe:Ne,Sn=lt(Jn.dist(o,U,Te,Wt,pn));if(Sn<to){let Kn=Jn.bias;if(Kn!=0){let Vt=Vn(pn,Ce.scale),dn=Ge>=0?1:-1,Pn=Vt>=0?1:-1;Pn==dn&&(Pn==1?Kn==1?Ge>=Vt:Ge<=Vt:Kn==1?Ge<=Vt:Ge>=Vt)&&(to=Sn,vo=U)}else to=Sn,vo=U}}if(un||Ci){let pn,Sn;O.ori==0?(pn=qt,Sn=Wt):(pn=Wt,Sn=qt);let Kn,Vt,dn,Pn,Gn,Ct,Kt=!0,Qo=Tt.bbox;if(Qo!=null){Kt=!1;let Bt=Qo(o,U);dn=Bt.left,Pn=Bt.top,Kn=Bt.width,Vt=Bt.height}else dn=pn,Pn=Sn,Kn=Vt=Tt.size(o,U);if(Ct=Tt.fill(o,U),Gn=Tt.stroke(o,U),Ci)U==vo&&to<=Jn.prox&&(C=dn,I=Pn,ee=Kn,be=Vt,_e=Kt,pe=Ct,Y=Gn);else{let Bt=cn[U];Bt!=null&&(Bi[U]=dn,Fi[U]=Pn,Kh(Bt,Kn,Vt,Kt),qh(Bt,Ct,Gn),Qn(Bt,vn(dn),vn(Pn),ie,B))}}}}if(Ci){let U=Jn.prox,Ce=Yo==null?to<=U:to>U||vo!=Yo;if(un||Ce){let Ke=cn[0];Ke!=null&&(Bi[0]=C,Fi[0]=I,Kh(Ke,ee,be,_e),qh(Ke,pe,Y),Qn(Ke,vn(C),vn(I),ie,B))}}}if(We.show&&wo)if(l!=null){let[x,R]=Qe.scales,[W,C]=Qe.match,[I,ee]=l.cursor.sync.scales,be=l.cursor.drag;if(dt=be._x,mt=be._y,dt||mt){let{left:_e,top:pe,width:Y,height:U}=l.select,Ce=l.scales[I].ori,Ke=l.posToVal,ht,Te,Ge,qt,Wt,pn=x!=null&&W(x,I),Sn=R!=null&&C(R,ee);pn&&dt?(Ce==0?(ht=_e,Te=Y):(ht=pe,Te=U),Ge=L[x],qt=H(Ke(ht,I),Ge,w,0),Wt=H(Ke(ht+Te,I),Ge,w,0),Cs(In(qt,Wt),lt(Wt-qt))):Cs(0,w),Sn&&mt?(Ce==1?(ht=_e,Te=Y):(ht=pe,Te=U),Ge=L[R],qt=X(Ke(ht,ee),Ge,k,0),Wt=X(Ke(ht+Te,ee),Ge,k,0),Bs(In(qt,Wt),lt(Wt-qt))):Bs(0,k)}else Cl()}else{let x=lt(Fp-Cp),R=lt(Ip-Bp);if(O.ori==1){let ee=x;x=R,R=ee}dt=yt.x&&x>=yt.dist,mt=yt.y&&R>=yt.dist;let W=yt.uni;W!=null?dt&&mt&&(dt=x>=W,mt=R>=W,!dt&&!mt&&(R>x?mt=!0:dt=!0)):yt.x&&yt.y&&(dt||mt)&&(dt=mt=!0);let C,I;dt&&(O.ori==0?(C=Ui,I=Oe):(C=Ji,I=Ne),Cs(In(C,I),lt(I-C)),mt||Bs(0,k)),mt&&(O.ori==1?(C=Ui,I=Oe):(C=Ji,I=Ne),Bs(In(C,I),lt(I-C)),dt||Cs(0,w)),!dt&&!mt&&(Cs(0,0),Bs(0,0))}if(yt._x=dt,yt._y=mt,l==null){if(m){if(Qp!=null){let[x,R]=Qe.scales;Qe.values[0]=x!=null?Vn(O.ori==0?Oe:Ne,x):null,Qe.values[1]=R!=null?Vn(O.ori==1?Oe:Ne,R):null}Is(mc,o,Oe,Ne,ie,B,g)}if(Wi){let x=m&&Qe.setSeries,R=Jn.prox;Yo==null?to<=R&&qn(vo,Vi,!0,x):to>R?qn(null,Vi,!0,x):vo!=Yo&&qn(vo,Vi,!0,x)}}un&&(ce.idx=g,Ll()),p!==!1&&ft("setCursor")}let ko=null;Object.defineProperty(o,"rect",{get(){return ko==null&&Fs(!1),ko}});function Fs(l=!1){l?ko=null:(ko=P.getBoundingClientRect(),ft("syncRect",ko))}function Hp(l,p,m,g,_,w,k){j._lock||wo&&l!=null&&l.movementX==0&&l.movementY==0||(Ol(l,p,m,g,_,w,k,!1,l!=null),l!=null?Zo(null,!0,!0):Zo(p,!0,!1))}function Ol(l,p,m,g,_,w,k,x,R){if(ko==null&&Fs(!1),Ko(l),l!=null)m=l.clientX-ko.left,g=l.clientY-ko.top;else{if(m<0||g<0){Oe=-10,Ne=-10;return}let[W,C]=Qe.scales,I=p.cursor.sync,[ee,be]=I.values,[_e,pe]=I.scales,[Y,U]=Qe.match,Ce=p.axes[0].side%2==1,Ke=O.ori==0?ie:B,ht=O.ori==1?ie:B,Te=Ce?w:_,Ge=Ce?_:w,qt=Ce?g:m,Wt=Ce?m:g;if(_e!=null?m=Y(W,_e)?c(ee,L[W],Ke,0):-10:m=Ke*(qt/Te),pe!=null?g=U(C,pe)?c(be,L[C],ht,0):-10:g=ht*(Wt/Ge),O.ori==1){let pn=m;m=g,g=pn}}R&&(p==null||p.cursor.event.type==mc)&&((m<=1||m>=ie-1)&&(m=yi(m,ie)),(g<=1||g>=B-1)&&(g=yi(g,B))),x?(Cp=m,Bp=g,[Ui,Ji]=j.move(o,m,g)):(Oe=m,Ne=g)}let Wl={width:0,height:0,left:0,top:0};function Cl(){Or(Wl,!1)}let jp,Up,Jp,qp;function Vp(l,p,m,g,_,w,k){wo=!0,dt=mt=yt._x=yt._y=!1,Ol(l,p,m,g,_,w,k,!0,!1),l!=null&&(Ot(fc,bc,Kp,!1),Is(Ih,o,Ui,Ji,ie,B,null));let{left:x,top:R,width:W,height:C}=We;jp=x,Up=R,Jp=W,qp=C}function Kp(l,p,m,g,_,w,k){wo=yt._x=yt._y=!1,Ol(l,p,m,g,_,w,k,!1,!0);let{left:x,top:R,width:W,height:C}=We,I=W>0||C>0,ee=jp!=x||Up!=R||Jp!=W||qp!=C;if(I&&ee&&Or(We),yt.setScale&&I&&ee){let be=x,_e=W,pe=R,Y=C;if(O.ori==1&&(be=R,_e=C,pe=x,Y=W),dt&&yo(N,Vn(be,N),Vn(be+_e,N)),mt)for(let U in L){let Ce=L[U];U!=N&&Ce.from==null&&Ce.min!=Pe&&yo(U,Vn(pe+Y,U),Vn(pe,U))}Cl()}else j.lock&&(j._lock=!j._lock,Zo(p,!0,l!=null));l!=null&&(Ei(fc,bc),Is(fc,o,Oe,Ne,ie,B,null))}function H$(l,p,m,g,_,w,k){if(j._lock)return;Ko(l);let x=wo;if(wo){let R=!0,W=!0,C=10,I,ee;O.ori==0?(I=dt,ee=mt):(I=mt,ee=dt),I&&ee&&(R=Oe<=C||Oe>=ie-C,W=Ne<=C||Ne>=B-C),I&&R&&(Oe=Oe<Ui?0:ie),ee&&W&&(Ne=Ne<Ji?0:B),Zo(null,!0,!0),wo=!1}Oe=-10,Ne=-10,xe.fill(null),Zo(null,!0,!0),x&&(wo=x)}function Gp(l,p,m,g,_,w,k){j._lock||(Ko(l),$l(),Cl(),l!=null&&Is(Hh,o,Oe,Ne,ie,B,null))}function Yp(){V.forEach(Lk),_l(o.width,o.height,!0)}xi(Ca,bs,Yp);let Ki={};Ki.mousedown=Vp,Ki.mousemove=Hp,Ki.mouseup=Kp,Ki.dblclick=Gp,Ki.setSeries=(l,p,m,g)=>{let _=Qe.match[2];m=_(o,p,m),m!=-1&&qn(m,g,!0,!1)},Lt&&(Ot(Ih,P,Vp),Ot(mc,P,Hp),Ot(Nh,P,l=>{Ko(l),Fs(!1)}),Ot(zh,P,H$),Ot(Hh,P,Gp),Pc.add(o),o.syncRect=Fs);let Wr=o.hooks=e.hooks||{};function ft(l,p,m){Al?Ws.push([l,p,m]):l in Wr&&Wr[l].forEach(g=>{g.call(null,o,p,m)})}(e.plugins||[]).forEach(l=>{for(let p in l.hooks)Wr[p]=(Wr[p]||[]).concat(l.hooks[p])});let Zp=(l,p,m)=>m,Qe=nt({key:null,setSeries:!1,filters:{pub:Xh,sub:Xh},scales:[N,M[1]?M[1].scale:null],match:[eg,eg,Zp],values:[null,null]},j.sync);Qe.match.length==2&&Qe.match.push(Zp),j.sync=Qe;let Qp=Qe.key,Bl=Yg(Qp);function Is(l,p,m,g,_,w,k){Qe.filters.pub(l,p,m,g,_,w,k)&&Bl.pub(l,p,m,g,_,w,k)}Bl.sub(o);function j$(l,p,m,g,_,w,k){Qe.filters.sub(l,p,m,g,_,w,k)&&Ki[l](null,p,m,g,_,w,k)}o.pub=j$;function U$(){Bl.unsub(o),Pc.delete(o),jo.clear(),vc(Ca,bs,Yp),h.remove(),ye?.remove(),ft("destroy")}o.destroy=U$;function Fl(){ft("init",e,t),Rp(t||e.data,!1),q[N]?Ml(N,q[N]):$l(),Rr=We.show&&(We.width>0||We.height>0),Vo=un=!0,_l(e.width,e.height)}return M.forEach(Sp),V.forEach(v$),n?n instanceof HTMLElement?(n.appendChild(h),Fl()):n(o,Fl):Fl(),o}xt.assign=nt;xt.fmtNum=Oc;xt.rangeNum=Ba;xt.rangeLog=Na;xt.rangeAsinh=Ec;xt.orient=Si;xt.pxRatio=we;xt.join=x0;xt.fmtDate=Cc,xt.tzDate=W0;xt.sync=Yg;{xt.addGap=_k,xt.clipGaps=ja;let e=xt.paths={points:n_};e.linear=i_,e.stepped=wk,e.bars=yk,e.spline=kk}var jc=class extends HTMLElement{#t;#n;#e=0;#s=new ResizeObserver(()=>this.#o());set gauge(t){t!==this.#n&&(this.#n=t,this.#i())}set line(t){t!==this.#e&&(this.#e=t,this.#t?.redraw(!1))}connectedCallback(){this.#s.observe(this),this.#i()}disconnectedCallback(){this.#s.disconnect(),this.#t?.destroy(),this.#t=void 0}#o(){this.clientWidth&&this.#t?.setSize({width:this.clientWidth,height:260})}#i(){let t=this.#n?.pockets[0]?.levels??[];if(!this.isConnected||!t.length)return;this.#t?.destroy();let n=[0,...t.map(r=>r.depth_mm)],o=[0,...t.map(r=>r.volume_ml)],i=getComputedStyle(this).color,s={stroke:i,font:"16px system-ui",labelFont:"16px system-ui",labelSize:26,grid:{stroke:"#8884"}};this.#t=new xt({width:this.clientWidth||320,height:260,legend:{show:!1},cursor:{show:!1},scales:{x:{time:!1}},axes:[{...s,label:"depth, mm"},{...s,label:"volume, ml",size:60}],pxAlign:0,series:[{},{stroke:i,width:2.5,pxAlign:0,points:{show:!1}}],hooks:{draw:[r=>this.#r(r)]}},[n,o],this)}#r(t){let n=t.valToPos(this.#e,"x",!0),{ctx:o,bbox:i}=t;o.save(),o.strokeStyle=getComputedStyle(this).color,o.lineWidth=2*devicePixelRatio,o.setLineDash([8,5]),o.beginPath(),o.moveTo(n,i.top),o.lineTo(n,i.top+i.height),o.stroke(),o.restore()}};customElements.define("level-curve",jc);function l_(e){let t=Me(e,"/measured_density");return u`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${v({label:"Temperature at the pour",of:e,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F."})}
      ${v({label:"Cure",of:e,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days."})}
    </div>
    ${Bk(e)}
    ${me({of:e,name:"density",pointers:["/measured_density"],summary:`Density measured${t&&`: ${t}`}`,body:()=>v({label:"Of the plain, unwhipped batter, by weigh-cup",of:e,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var Ok=[["unsaid","Not said"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],u_={after:"",mass:""},c_=3,Wk={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{finally_lost:"",time_constant:""}},weighed:{drying:{weighings:Array.from({length:c_},()=>u_)}}};function Ck(e){return D(e,"/drying/weighings")!==void 0?"weighed":D(e,"/drying")!==void 0?"law":D(e,"/water_lost_in_cure")===void 0?"unsaid":"share"}function Bk(e){let t=Ck(e);return u`${Z({of:e,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:t,answers:Ok,puts:o=>({...Ze(e,"",["drying","water_lost_in_cure"]),...Wk[o]})})}
  ${t==="share"?u`<div class="row">
          ${v({label:"Of the batter's water, gone when it is sold",of:e,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:f}
  ${t==="law"?u`<div class="row">
          ${v({label:"Of the batter's water, gone in the end",of:e,at:"/drying/finally_lost",unit:"%"})}
          ${v({label:"After this, 63 % of that is gone",of:e,at:"/drying/time_constant",unit:"days"})}
        </div>`:f}
  ${t==="weighed"?Fk(e):f}`}function Fk(e){let t={of:e,at:"/drying/weighings",least:c_};return u`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${re(t).map((n,o)=>u`<div class="row named" id=${Ee(t,o)}>
          ${v({label:"Time since the pour",of:e,at:`${t.at}/${o}/after`,unit:"days",short:!0})}
          ${v({label:"Mass",of:e,at:`${t.at}/${o}/mass`,unit:"g",short:!0})}
          ${Ve(t,o,`weighing ${o+1}`)}
        </div>`)}
    ${je(t,"One more weighing",()=>He(t,u_,"weighing"))}`}var Ik=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],Va=e=>is(e).map(t=>[t.id,t.name]),p_=["unsaid","Not said"],d_=["none","Holds none"],m_=e=>e===void 0?"unsaid":e==="none"?"none":"some",Nk=e=>t=>t==="some"?e:t==="none"?"none":void 0;function f_(e,t){return Uc(e,`${t}/contains_fat`,[p_,d_,["some","Holds fat"]],Va(e))}function Uc(e,t,n,o){let i=m_(D(e,t)),s=n.some(([r])=>r===i)?i:void 0;return u`${Z({of:e,question:"Fat in it",at:t,chosen:s,answers:n,puts:Nk({fat:"",share:""})})}
  ${i==="some"?u`<div class="row">
          ${Ln({label:"Which fat",of:e,at:`${t}/fat`,answers:o,unsaid:"choose ..."})}
          ${v({label:"Fat in what is weighed",of:e,at:`${t}/share`,unit:"%",short:!0})}
        </div>`:f}`}var zk=[p_,d_,["some","Holds acid"],["typed","By what it takes up"]],Hk={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function Jc(e,t){let n=`${t}/acid`,o=D(e,`${n}/takes_up`)!==void 0?"typed":m_(D(e,n));return u`${Z({of:e,question:"Acid in it",at:n,chosen:o,answers:zk,puts:i=>Hk[i]})}
  ${o==="some"?u`<div class="row">
          ${Ln({label:"Which acid",of:e,at:`${n}/acid`,answers:Ik.map(i=>[i,i]),unsaid:"choose ..."})}
          ${v({label:"Of that acid in what is weighed",of:e,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:f}
  ${o==="typed"?u`<div class="row">
          ${v({label:"Taken up by 1 g of it",of:e,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:f}
  ${o==="some"||o==="typed"?qc(e,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):f}`}function qc(e,t,n){let o=D(e,t)===!0?"yes":"no";return Z({of:e,question:n,at:t,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var jk=["tsp/lb","tbsp/lb","tsp/kg"],Ka=["%","g/kg",...jk].flatMap(e=>[`${e} of fats`,`${e} of batter`]),g_=[...Ka,"% of finished soap","g/kg of finished soap"];function h_(e,t){let n=e.trim().replaceAll(/\s+/g," "),o=[...t].sort((i,s)=>s.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():e,o]}function Ga(e,t,n,o,i=!1){let s=st(e,t),[r,c]=h_(Me(e,t),o),d=a.typed?.key===s?a.typed.text:r,h=Yn(e,t),b=(y,S)=>{let P=`${y.trim()} ${S}`.trim();_t(e,t,i&&!y.trim()?void 0:P),T()},$=y=>{let S=y.target.value,[P,F]=h_(S,o);a.typed={key:s,text:S},b(P,F||c)};return u`<div class="field rate ${h?"wants":""}">
    <label for=${s}>${n}</label>
    <div class="rate-of">
      <input
        id=${s}
        .value=${St(d)}
        @input=${$}
        @blur=${nu}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${h?"true":"false"}
        aria-describedby=${h?`${s}-said`:f}
      />
      <select
        aria-label="${n}: of what"
        @change=${y=>b(d,y.target.value)}
      >
        <option value="" .selected=${St(c==="")}>of what?</option>
        ${o.map(y=>u`<option value=${y} .selected=${St(y===c)}>${y}</option>`)}
      </select>
    </div>
    ${Gt(s,h)}
  </div>`}function Uk(e){let t=e.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=t.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,s)=>i+s,0);return{sum:Math.round(o*1e6)/1e6,unread:t.length-n.length}}var Jk=.01+1e-9;function Ya(e,t){let{sum:n,unread:o}=Uk(t),i=r=>`${String(Math.round(r*1e6)/1e6)} %`;if(o===t.length)return`${e} have no share yet.`;if(o)return`${e} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let s=100-n;return Math.abs(s)<=Jk?`${e} add to ${i(n)}.`:s>0?`${e} add to ${i(n)}: ${i(s)} ${s===1?"is":"are"} missing.`:`${e} add to ${i(n)}: ${i(-s)} too much.`}var $_=(e,t)=>is(e).find(n=>n.id===t)?.name??t,vr=e=>({of:e,at:"/fats",in_order:!0,stays:!0}),Za=e=>re(vr(e));function b_(e){let t=Za(e),n=a.picking?.of===e&&a.picking.row===t.length;return u`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${t.map((o,i)=>qk(e,i,t))}
    </ol>
    <p class="total" role="status">
      ${t.length?Ya("The fats",t.map(o=>o.share)):"No fat yet."}
    </p>
    ${n?y_(e):je(vr(e),"Add a fat",()=>w_(e,t.length))} ${Xk(e)}
  </section>`}function qk(e,t,n){let o=`/fats/${t}`,i=$_(e,String(n[t].fat??""))||"Which fat?",s=At(e,`${o}/fat`)??At(e,o),r=a.picking?.of===e&&a.picking.row===t;return u`<li class="formula-row" id=${Ee(vr(e),t)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${st(e,`${o}/fat`)}
        aria-expanded=${r?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>r?Vc():w_(e,t)}
      >
        ${i}
      </button>
      ${v({label:"Share",of:e,at:`${o}/share`,unit:"%",short:!0})} ${Ve(vr(e),t,i)}
    </div>
    ${s?u`<p class="complaint">${s}</p>`:f} ${r?y_(e):f}
    ${me({of:e,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${Kk(n[t])}`,body:()=>Zk(e,t)})}
  </li>`}function w_(e,t){a.picking={of:e,row:t,text:""},T(),ca(_n("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function Vc(){let e=a.picking;a.picking=void 0,T(),e&&ca(Mo(e.of,e.row<Za(e.of).length?`/fats/${e.row}/fat`:"/fats"))}function __(e,t){let{row:n}=a.picking,o=Za(e);a.picking=void 0;let i=o[n]?{fat:t,share:o[n].share??""}:{fat:t,share:""};ur(vr(e),`${$_(e,t)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],Mo(e,`/fats/${n}/share`))}function Vk(e,t){let n=t.toLowerCase().split(/\s+/).filter(Boolean),o=`${e.name} ${e.id.replaceAll("_"," ")}`.toLowerCase();return n.every(i=>o.includes(i))}function y_(e){let{row:t,text:n}=a.picking,o=Za(e).map(d=>d.fat),i=is(e).filter(d=>Vk(d,n)),s=i.filter(d=>!o.includes(d.id)||o[t]===d.id);return u`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input id="find-fat" .value=${n} @input=${d=>{a.picking.text=d.target.value,T()}} @keydown=${d=>{d.key==="Escape"&&Vc(),d.key==="Enter"&&s.length===1&&__(e,s[0].id)}} autocomplete="off" spellcheck="false" />
      </div>
      <button type="button" @click=${Vc}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?i.length===1?"One fat":`${i.length} fats`:"No fat of that name. One that is not here is described in a file of your own fats."}
    </p>
    <div class="choice">
      ${i.map(d=>{let h=o.includes(d.id)&&o[t]!==d.id;return u`<button
          type="button"
          ?disabled=${h}
          aria-pressed=${o[t]===d.id?"true":f}
          @click=${()=>__(e,d.id)}
        >
          ${d.name}${h?" (is in it)":""}
        </button>`})}
    </div>
  </div>`}function Kk(e){let t=e.saponification_value,n=t,i=t===""||t!==null&&typeof t=="object"&&n.low===""?"to be said":t===void 0?"published values":t!==null&&typeof t=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(t)} mg KOH per g`;return`: ${e.lot?`${String(e.lot)}, `:""}${i}`}var Gk=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],Yk={published:void 0,one:"",range:{low:"",typical:"",high:""}};function Zk(e,t){let n=`/fats/${t}/saponification_value`,o=D(e,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",s=D(e,`/fats/${t}/confirmed`)!==void 0,r=(c,d)=>v({label:c,of:e,at:d,number:!0,short:!0});return u` ${v({label:"Lot",of:e,at:`/fats/${t}/lot`,optional:!0,short:!0})}
  ${Z({of:e,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:Gk,puts:c=>Yk[c],hint:Qk(e,Me(e,`/fats/${t}/fat`))})}
  ${i==="one"?u`<div class="row">${r("Saponification value",n)}</div>`:f}
  ${i==="range"?u`<div class="row">
          ${r("Lowest",`${n}/low`)} ${r("Typical",`${n}/typical`)} ${r("Highest",`${n}/high`)}
        </div>`:f}
  ${i!=="published"||s?qc(e,`/fats/${t}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):f}`}function Qk(e,t){let n=is(e).find(i=>i.id===t),o=n?.saponification_value_mg_koh_per_g;return o?`Published: ${o.low} to ${o.high} (${o.source}).`:n?.own?`In your file: ${n.own}.`:void 0}function Xk(e){let t=iu(e),n=Array.isArray(t)?`In it: ${t.map(i=>i.name).join(", ")}.`:t==="none"?"No such file is found from here.":void 0,o=Me(e,"/fats_from");return me({of:e,name:"own fats",pointers:["/fats_from"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>v({label:"Its name, as it lies beside this formula",of:e,at:"/fats_from",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list above."})})}var v_="danger-of-superfat";function k_(e,t){return u`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${v({label:"Superfat: of all that is fat, left without lye",of:e,at:"/superfat",unit:"%",described_by:di(e).length?v_:void 0})}
    </div>
    ${or(e,v_)} ${ex(e)} ${rx(e,t)}
  </section>`}function ex(e){let t=To(e,"/alkali"),n=t.length>1?"both":t[0]?.alkali;return u`${Z({of:e,question:"Alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>tx(t,i),then:i=>i==="both"?"/alkali/0/saponifies":"/alkali/0/purity"})}
  ${t.map((i,s)=>nx(e,i,s,t.length>1))}
  ${t.length>1?u`<p class="total" role="status">
          ${Ya("The two",t.map(i=>i.saponifies))}
        </p>`:f}`}function tx(e,t){let n=(o,i)=>({purity:"",...e.find(s=>s.alkali===o),alkali:o,saponifies:i});return t==="both"?[n("NaOH",""),n("KOH","")]:[n(t,"100 %")]}function nx(e,t,n,o){let i=`/alkali/${n}`,s=String(t.alkali??""),r=At(e,i)??At(e,`${i}/alkali`);return u`<div class="formula-row">
    ${r?u`<p class="complaint">${r}</p>`:f}
    <div class="row">
      ${o||t.saponifies!=="100 %"?v({label:`${s}: share of the saponifying`,of:e,at:`${i}/saponifies`,unit:"%",hint:"By equivalents, not by weight."}):f}
      ${v({label:`${s}: purity`,of:e,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document."})}
    </div>
    ${me({of:e,name:i,pointers:[`${i}/purity_range`],summary:`Purity that the supplier warrants${ox(t.purity_range)}`,body:()=>ix(e,i)})}
  </div>`}var ox=e=>Array.isArray(e)?`: ${e.map(String).join(" to ")}`:"";function ix(e,t){let n=`${t}/purity_range`,o=D(e,n)!==void 0;return u`${Z({of:e,question:"Warranted range",at:n,chosen:o?"said":"none",answers:[["none","Not said"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?u`<div class="row">
          ${v({label:"Lowest",of:e,at:`${n}/0`,unit:"%",short:!0})}
          ${v({label:"Highest",of:e,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:f}`}var sx={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function rx(e,t){let n=Object.keys(D(e,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(sx);return u`${Z({of:e,question:"Water: how do you say it?",at:"/water",chosen:o,answers:i,puts:s=>({[s]:""}),then:s=>`/water/${s}`,hint:lx(t)})}
    <div class="row">${n.map(s=>ax(e,s))}</div>`}function ax(e,t){let n=`/water/${t}`;return t==="water_to_alkali"?v({label:"Parts of water for 1 part of pure alkali",of:e,at:n,number:!0}):t==="lye_strength"?v({label:"Strength: pure alkali in alkali and water together",of:e,at:n,unit:"%"}):v({label:"Water, as a share of the fats",of:e,at:n,unit:"%"})}function lx(e){if(!(!e||a.is_old))return`It now makes a strength of ${z(e.lye_strength_percent,1)} %; ${z(e.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${z(e.water_percent_of_fats,1)} % of the fats.`}var ux=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:$x},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:dx},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:mx},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:fx}];function x_(e){return ux.map(t=>{let n={of:e,at:`/${t.list}`},o=re(n),i=(s,r)=>u`<li class="formula-row" id=${Ee(n,r)}>
        ${px(e,t,n,s,r)} ${t.row(e,`${n.at}/${r}`,s)}
      </li>`;return u`<section class="card" aria-labelledby="${t.list}-title">
      <h2 id="${t.list}-title">${t.title}</h2>
      ${o.length?u`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:u`<p class="aside">${t.aside}</p>`}
      ${je(n,t.add,()=>He(n,cx(t),t.add.replace("Add ","")))}
    </section>`})}function cx(e){return e.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function px(e,t,n,o,i){let s=`/${t.list}/${i}`,r=At(e,s),c=String(o.name||`number ${i+1} of the ${t.list}`);return u`${r?u`<p class="complaint">${r}</p>`:f}
    <div class="row named">
      ${v({label:"Name",of:e,at:`${s}/name`})}
      ${t.list==="liquids"?f:Ga(e,`${s}/rate`,"How much",Ka)}
      ${Ve(n,i,c)}
    </div>`}function Kc(e,t,n,o){let i=`${t}/goes_into`,s=D(e,i);return Z({of:e,question:"Goes into",at:i,chosen:s,answers:n,puts:c=>c,hint:o||s?void 0:"The batter, unless you name another place."})}var T_=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function Gc(e,t,n){let o=(r,c,d)=>r?`${c}${String(r)}${d}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),s=["bulk_density","density","limit"].map(r=>`${t}/${r}`);return me({of:e,name:`${t} densities`,pointers:s,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>u` <div class="row">
          ${v({label:"Density in the spoon",of:e,at:`${t}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${v({label:"Density of itself",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${Ga(e,`${t}/limit`,"The most that the supplier's document allows",g_,!0)}`})}function Yc(e,t,n,o){let i=(r,c)=>r===void 0?"":r==="none"?`no ${c}`:c,s=[i(n.contains_fat,"fat"),o?i(n.acid,"acid"):""].filter(Boolean).join(", ");return me({of:e,name:`${t} holds`,pointers:[`${t}/contains_fat`,`${t}/acid`],summary:`${o?"Fat or acid":"Fat"} in it${s&&`: ${s}`}`,body:()=>u`${f_(e,t)} ${o?Jc(e,t):f}`})}var Qa=(e,t,n)=>Wo(e,t,String(n.name||"it"));function dx(e,t,n){return u`${Kc(e,t,T_,!0)}
    <div class="folds">${Yc(e,t,n,!0)} ${Gc(e,t,n)} ${Qa(e,t,n)}</div>`}function S_(e,t,n){return me({of:e,name:`${t} place`,pointers:[`${t}/goes_into`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>Kc(e,t,T_,!1)})}function mx(e,t,n){return u`<div class="folds">
    ${Gc(e,t,n)} ${Qa(e,t,n)} ${S_(e,t,n)} ${Yc(e,t,n,!1)}
  </div>`}function fx(e,t,n){return u`${gx(e,t)}
    <div class="folds">
      ${Gc(e,t,n)} ${Qa(e,t,n)} ${S_(e,t,n)} ${Yc(e,t,n,!0)}
    </div>`}var hx=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function gx(e,t){let n=`${t}/dispersed_in`,o=D(e,n)!==void 0,i=D(e,`${n}/from`);return u`${Z({of:e,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:r=>r==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?u`<div class="row">
            ${Ln({label:"Which oil",of:e,at:`${n}/fat`,answers:Va(e),unsaid:"choose ..."})}
            ${v({label:"g of oil for 1 g of colour",of:e,at:`${n}/oil_per_colour`,number:!0,short:!0})}
          </div>
          ${Z({of:e,question:"That oil is",at:`${n}/from`,chosen:i,answers:hx,puts:r=>r,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:f}`}var _x=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function $x(e,t,n){let o=(i,s,r)=>me({of:e,name:`${t}/${i}`,pointers:[`${t}/${i}`],summary:s,body:r});return u`${wx(e,t,n)}
    ${Kc(e,t,[["lye","The lye"],["batter","The batter"]],!0)}
    ${vx(e,t)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Goes in as ice: no",()=>bx(e,`${t}/frozen`))}
      ${o("acid",`Acid in it${n.acid===void 0?"":n.acid==="none"?": none":": some"}`,()=>Jc(e,t))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>v({label:"Density",of:e,at:`${t}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${Qa(e,t,n)}
    </div>`}function bx(e,t){let n=D(e,t)===!0?"ice":"liquid";return Z({of:e,question:"Goes in as ice, which keeps the lye cooler",at:t,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function wx(e,t,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=s=>({...Ze(e,t,["replaces","rate"]),[s]:""});return u`${Z({of:e,question:"How much",at:t,asked_at:`${t}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:yx,puts:i})}
  ${o==="replaces"?u`<div class="row">
          ${v({label:"Of the formula's water",of:e,at:`${t}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:f}
  ${o==="rate"?Ga(e,`${t}/rate`,"Rate",Ka):f}`}var yx=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function vx(e,t){let n=`${t}/composition`,o=typeof D(e,n)=="object",i={water:"",sugar:"",salt:"",source:""},s=(c,d)=>v({label:c,of:e,at:`${n}/${d}`,unit:"%",short:!0});return u`${Z({of:e,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Shipped figures"],["label","The label's figures"]],puts:c=>c==="label"?i:""})}
  ${o?u`<div class="row">${s("Water","water")} ${s("Sugar","sugar")} ${s("Salt","salt")}</div>
          ${Uc(e,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...Va(e)])}
          <div class="row">
            ${v({label:"Where the figures are from",of:e,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:u`<div class="row">
          ${Ln({label:"Shipped figures of",of:e,at:n,answers:_x.map(c=>[c,c]),unsaid:"choose ..."})}
        </div>`}`}function P_(){let e=a.formula_of,t=a.formulas[e];if(!t)return u`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${tr()}${cc()}
      <p>Reading the formula ...</p>
      ${Qc(e)}`;let n=a.plan&&pa(a.plan),o=e==="pipe"?n?.whippings[0]:n?.pour;return u`${tr()}
    <h1 id="formula-title" tabindex="-1">${String(t.document.name||"A formula without a name")}</h1>
    <p class="aside">${kx(e)}</p>
    <div class="choice">${Qc(e)}${e==="apart"?xx():f}</div>
    ${Tx(e,o,n)} ${Mx(e)} ${b_(e)} ${k_(e,o)} ${x_(e)}
    ${l_(e)}
    <div class="choice">${Qc(e)}</div>`}var Zc=()=>String(a.run.name??a.file);function kx(e){let t=a.formulas[e],n=t.shipped?" It came with the program: your first change makes a copy of it beside your runs.":"",o=a.formulas.pour===t&&a.formulas.pipe===t;return e==="apart"?`It lies open by itself; its figures are those of a base for "${Zc()}".${n}`:o?`Base and topping of "${Zc()}" are both made of it.${n}`:`${e==="pour"?"Base":"Topping"} of "${Zc()}".${n}`}function Qc(e){return u`<button type="button" class="strong" @click=${()=>{rr()}}>
    ${e==="apart"?"Close the formula":"Back to the run"}
  </button>`}function xx(){return u`<button type="button" @click=${()=>{xu("pour")}}>Use it as the base</button> ${wn()?u`<button type="button" @click=${()=>{xu("pipe")}}>Use it as the topping</button>`:f}`}function Tx(e,t,n){return u`<section class="strip" aria-label="What comes of it">
    ${t&&n?u`<dl>
            ${[...Sx(e,n),...Px(e,t)].map(([o,i])=>u`<div class=${a.is_old?"old":""}>
                  <dt>${o}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:f}
    ${Rx(e)}
  </section>`}function Sx(e,t){let n=e==="pipe"?hi(t,t.whippings[0]).replace(/^one whipping: /,""):"";return n?[["For one whipping",n]]:vt(t.whole)?[["For one batch",Zt(t.whole,t.batch)]]:[]}function Px(e,t){let n=di(e).length?" \u26A0":"";return[["Fats",se(Se(a.units,t.fats_g))],["Superfat comes out at",`${Dn(t.superfat_percent.effective)}${n}`],...ps(t).map(({one:o})=>[o.name,se(bn(a.units,o))])]}function Rx(e){let t=a.complaint;if(!t)return u`<div role="status"></div>`;let n=os(e),o=n&&t.field!==""&&document.activeElement!==io();return u`<div role="status" class="asks">
    <p class="alarm">
      <strong>${a.plan?"These figures are from before.":"No figures yet."}</strong>
      ${n?"":"Not about this formula: "}${Ax(t.field)}${fn(t)}
    </p>
    ${t.is_fault?u`<button type="button" @click=${pc}>Ask again</button>`:f}
    ${o?u`<button type="button" @click=${()=>io()?.focus()}>Go to the field</button>`:f}
  </div>`}function Ax(e){let t=e.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return t.length?`${t.join("").slice(2)}: `:""}function Mx(e){return u`<section class="card" aria-label="Name">
    ${v({label:"Name",of:e,at:"/name",wide:!0})}
    ${me({of:e,name:"note",pointers:["/note"],summary:"Your note",body:()=>v({label:"Note",of:e,at:"/note",optional:!0,wide:!0})})}
  </section>`}var Xa=Math.PI/8,Dx=500,Xc=class extends HTMLElement{#t=[];#n=0;#e;#s=!1;#o=!1;#i="";#r=!1;#a="";#l="Looking at it ...";#c=0;#m=!1;#f=new ResizeObserver(()=>this.#e?.fit());#h=new IntersectionObserver(([t])=>this.#$(t.isIntersecting),{rootMargin:"400px"});set views(t){this.#t=t,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#c),this.#h.disconnect(),this.#f.disconnect(),this.#e?.end(),this.#e=void 0,this.#a="",URL.revokeObjectURL(this.#i)}#$(t){this.#m=t,t&&requestIdleCallback(()=>{this.#b()},{timeout:1500})}async#b(){if(this.#e||this.#o)return this.#g();let t=this.querySelector("canvas");if(!(!this.isConnected||!t||this.#s)){this.#s=!0;try{let{Turntable:n}=await import("./solid_view-FBP3IZOQ.js");this.#e=new n(t),this.#f.observe(t)}catch{this.#o=!0}this.#s=!1,this.#u(),await this.#d()}}#g(){let t=this.#e||this.#o;!this.#m||!t||this.#p()===this.#a||(window.clearTimeout(this.#c),this.#c=window.setTimeout(()=>{this.#d()},Dx))}#p(){let{of:t}=this.#t[this.#n],n=this.#o?"plan"in t?"piece":"picture":"glb",[o,i]=Object.entries(t)[0];return JSON.stringify({kind:n,[o]:this.#r&&!this.#o?{...i,"cut-open":!0}:i})}async#d(){let t=this.#p();if(t!==this.#a){try{let n=await Zi(JSON.parse(t));if(t!==this.#p()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#i),this.#i=URL.createObjectURL(n)):this.#e?.show(Yr(await n.arrayBuffer())),this.#a=t,this.#l=""}catch(n){if(!(n instanceof Q))throw n;this.#l=n.message}this.#u()}}#_(t){t(),this.#l="Looking at it ...",this.#u(),this.#d()}#u(){let t=u`<div class="choice" role="group" aria-label="What to look at">
      ${this.#t.map((o,i)=>u`<button
            type="button"
            aria-pressed=${i===this.#n?"true":"false"}
            @click=${()=>this.#_(()=>this.#n=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=u`<p class="aside" role="status">${this.#l}</p>`;ii(u`${t} ${this.#o?this.#y():this.#w()} ${n}`,this)}#w(){let t=i=>()=>this.#e?.turn(i),n=i=>()=>this.#e?.tip(i),o=()=>this.#_(()=>this.#r=!this.#r);return u`<canvas
        role="img"
        aria-label="${this.#t[this.#n]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${t(-Xa)}>Turn left</button>
        <button type="button" @click=${t(Xa)}>Turn right</button>
        <button type="button" @click=${n(Xa)}>From above</button>
        <button type="button" @click=${n(-Xa)}>From below</button>
        <button type="button" aria-pressed=${this.#r?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return u`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#i?u`<img
              src=${this.#i}
              alt="${this.#t[this.#n].words}, drawn to scale with its measures"
            />`:f}`}};customElements.define("solid-panel",Xc);var R_=(e,t=0)=>e.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(t-i).toFixed(2)}`).join("L")}Z`).join("");function Ex({outline:e,above:t}){let n=Math.max(4,(e.right-e.left)*.06),o=t.flat().map(([,b])=>b),[i,s]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],r=-e.brim-2*n+i,c=r-s-n,d=[e.left-n,c,e.right-e.left+2*n,-e.floor+n-c],h=(b,$)=>Xe`<path class="shaded pour" fill-rule="evenodd" d=${$} /><path class="wall ${b}" fill-rule="evenodd" d=${$} />`;return u`<div class="drawing tall">
    <svg
      viewBox=${d.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${h("above",R_(t,r))}${h("side",R_(e.loops))}
    </svg>
  </div>`}function Ps(e,t=!1,n=[]){let o=n.length?u`<p class="hint" role="status">Still to be said: ${n.join(", ")}.</p>`:f;if(!e)return u`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=e,s=i.pockets[0];return u`${Ex(e)}
    <p class="order ${t?"old":""}" role="status">
      Holds
      <b>${se(gt(a.units,s.brimful_ml))}</b>${i.pockets.length>1?u` in each of ${i.pockets.length}, ${se(gt(a.units,i.total_ml))} together`:f},
      ${se(Rt(a.units,s.brim_mm-s.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?u`<p class="aside">
            ${i.measurements.map(r=>`By ${r.by} ${se(gt(a.units,r.brimful_ml))}`).join("; ")}.
          </p>`:f}
    ${i.notes.length?u`<ul class="limits">
            ${i.notes.map(r=>u`<li>${r.text}</li>`)}
          </ul>`:f}`}var Je=(e,t)=>({name:e,label:t,unit:"mm"}),No=Je("height","Floor to brim"),el={name:"draft",label:"Lean of the wall",unit:"\xB0",optional:!0},ep={block:{words:"Box, loaf or slab",measures:[Je("length","Longer side at the brim"),Je("width","Shorter side"),No,el,{...Je("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[Je("floor_diameter","Across the floor"),Je("brim_diameter","Across the brim"),No]},fluted_cup:{words:"Fluted cup",measures:[Je("floor_diameter","Across the floor"),Je("brim_diameter","Across the brim"),No,{name:"flutes",label:"Flutes",unit:"",count:!0},Je("flute_depth","Depth of a flute")]},polygon:{words:"Equal sides",measures:[{name:"sides",label:"Sides",unit:"",count:!0},Je("across_flats","Across the flats"),No,el]},dome:{words:"Bowl",measures:[Je("diameter","Across the brim"),No]},half_ball:{words:"Half ball",measures:[Je("diameter","Across the brim")]},ball:{words:"Ball",measures:[Je("diameter","Across")]},half_ring:{words:"Half ring",measures:[Je("centre_diameter","Ring, middle to middle of the tube"),Je("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[Je("outer_floor_diameter","Cup, across the floor"),Je("outer_brim_diameter","Cup, across the brim"),Je("post_floor_diameter","Post, at its foot"),Je("post_brim_diameter","Post, at its top"),No]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[Je("height","Height"),Je("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[No,el],points:{columns:[Je("x","From the left"),Je("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[Je("side","Straight edge, tip to round"),No,el]}},A_=Object.fromEntries(Object.entries(ep).map(([e,{words:t}])=>[e,t])),Rs=e=>ep[e]?.measures??[],zo=e=>ep[e]?.points;var A={document:{},paper:{version:null},is_old:!1},Lx=30,M_=0,tp=!1,np=!1;function _o(e,t){let n=t.net??crypto.randomUUID();Object.assign(A,{document:e,paper:{...t,net:n},answer:void 0,is_old:!1,complaint:void 0,conflict:void 0,mine:void 0}),ip()}var Ox=["/name","/note","/owned","/unmould_after"];function ut(e,t){A.document=Ye(A.document,e,t),L_();let n=A.complaint?.field===e;Ox.includes(e)||(A.is_old=!0),(A.is_old||n||!["/name","/note"].includes(e))&&ip(),T()}function ip(){clearTimeout(M_),M_=window.setTimeout(()=>{Wx()},Lx)}async function Wx(){if(tp)return void(np=!0);if(!bt("shape")&&!bt("mesh"))return;if(nl().length)return A.complaint=void 0,T();tp=!0;let e=A.document;try{let t={file:A.paper.file??A.paper.from??"new.mould.json",mould:lp(e)};t.mould.name=String(t.mould.name??"").trim()||"New mould";let n=await es(t);A.document===e&&(A.answer=n,A.is_old=!1,A.complaint=void 0)}catch(t){if(!(t instanceof Q))throw t;A.document===e&&sp(t)}finally{tp=!1,np&&ip(),np=!1}T()}function sp(e){let{field:t,problem:n,remedy:o}=e.complaint;A.complaint={field:Cx(t),line:t?`${n}; ${o}`:e.message}}var Pi=e=>String(E(A.document,e)??"").trim(),Nn=()=>Pi("/shape/kind"),bt=e=>E(A.document,`/${e}`)!==void 0,rp=()=>["body","skin"].includes(Pi("/mesh/role"));function sn(e){let t=E(A.document,e);return Array.isArray(t)?t:[]}var op=e=>(zo(Nn())?.columns??[]).map(({name:t})=>String(E(e,`/${t}`)??"").trim());function As(){return sn("/shape/points").flatMap((e,t)=>op(e).every(Boolean)?[t]:[])}function tl(){return sn("/shape/points").flatMap((e,t)=>op(e).some(Boolean)&&!op(e).every(Boolean)?[t]:[])}var ap=()=>sn("/water/weighings").flatMap((e,t)=>String(e).trim()?[t]:[]);function lp(e){let t=e,n=(o,i)=>{Array.isArray(E(t,o))&&(t=Ye(t,o,i.map(s=>E(e,`${o}/${s}`))))};return zo(Nn())&&n("/shape/points",As()),n("/water/weighings",ap()),{...t}}function Cx(e){let[,t,n,o]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(e)??[];if(!t)return e;let i=t==="/shape/points"?As():ap();return`${t}/${i[Number(n)]??n}${o}`}function nl(){let e=[],t=(n,o)=>{n||e.push(o)};if(bt("shape")){t(Nn()!=="","the shape");for(let{name:o,label:i,optional:s}of Rs(Nn()))t(s||Pi(`/shape/${o}`)!=="",i.toLowerCase());let n=zo(Nn());n&&t(As().length>=n.least,`${n.least} points at least`)}if(bt("water")){t(Pi("/water/temperature")!=="","the water's temperature"),t(E(A.document,"/water/to")!==void 0,"how far the water was filled");for(let n of["depth","below_brim"])t(E(A.document,`/water/to/${n}`)===void 0||Pi(`/water/to/${n}`)!=="","the water's line");t(Pi("/water/of")!=="","what was weighed"),t(ap().length>0,"a weighing of water")}return!rp()&&!bt("mesh")&&t(Pi("/cavities")!=="","how many cavities one mould has"),e}var D_=()=>`mould ${a.files?.folder??""}`,E_=e=>`${D_()} ${e.net}`;function L_(){if(!(!bt("shape")&&!bt("mesh")))try{localStorage.setItem(E_(A.paper),JSON.stringify({document:A.document,paper:A.paper}))}catch{}}function O_(){return Object.keys(localStorage).filter(t=>t.startsWith(`${D_()} `)).sort().flatMap(t=>Bx(t)??[])}function Bx(e){try{return JSON.parse(localStorage.getItem(e)??"null")??void 0}catch{return}}var ol=(e=A.paper)=>localStorage.removeItem(E_(e));function W_(){let e=A.conflict;if(!e)return!0;try{let t=JSON.parse(e.text),n=A.document;_o(t,{...A.paper,version:e.version}),A.mine=n}catch{return!1}return T(),!0}function C_(){let[e,t]=[A.mine,A.document];_o(e,A.paper),A.mine=t,L_(),T()}var zn,Fx={mm:"in",g:"oz","\xB0C":"\xB0F"},Ix={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function il(e,t,n=""){if(zn?.pointer===e)return zn.unit;let o=ns(E(A.document,e));return Ix[t]?.test(o)?o:n||(a.units==="us"?Fx[t]??t:t)}function up(){zn=void 0}var sl=e=>`d${e.replaceAll("/","-")}`,rl=e=>zn?.pointer===e?zn.text:String(E(A.document,e)??"");function Ho(e){let{complaint:t}=A;return t&&(t.field===e||t.field.startsWith(`${e}/`))?t.line:void 0}function cp(e,t,n,o){let{pointer:i}=e,s=c=>{let d=c.target.value;zn={pointer:i,text:d,unit:e.unit?il(i,e.unit,e.unit_before):""},ut(i,Nx(e,d,zn.unit))},r=()=>{zn=void 0,T()};return u`<input
    id=${sl(i)}
    .value=${St(rl(i))}
    @input=${s}
    @blur=${r}
    @keydown=${n??f}
    autocomplete="off"
    spellcheck="false"
    inputmode=${e.count?"numeric":"text"}
    aria-label=${o??f}
    aria-describedby=${t??f}
    aria-invalid=${Ho(i)?"true":"false"}
  />`}function Nx(e,t,n){if(!((e.optional||e.count)&&!t.trim()))return e.count&&/^\s*\d{1,6}\s*$/.test(t)?Number(t):n&&ea(t)?`${t.trim()} ${n}`:t}function rn(e,t){let n=sl(e.pointer),o=Ho(e.pointer),i=zx(e.pointer)??e.hint,s=e.unit?` (${il(e.pointer,e.unit,e.unit_before)})`:"";return u`<div class="field ${e.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${e.label}${s}</label> ${cp(e,o||i?`${n}-said`:void 0,t)}
    ${Gt(n,o,i)}
  </div>`}function zx(e){let t=E(A.document,e);if(!(zn?.pointer!==e||typeof t!="string"||t===zn.text||!zn.text.includes("/")))return`taken as ${t}`}function al(e){let t=e.toLowerCase();return a.files?.moulds.find(n=>n.file!==A.paper.file&&n.name.trim().toLowerCase()===t)?.file}async function kr(e){let t=lp(A.document),n={...t,name:String(t.name).trim()};try{let o=A.paper.file?await jx(A.paper.file,n):await Hx(n);if(!o)return;ol(),a.files=await Rn("/api/files"),a.file&&(Mn(),$t()),e(o)}catch(o){if(!(o instanceof Q))throw o;sp(o)}T()}async function Hx(e){for(;;){let t=En(ir(String(e.name),".json"),[...a.files.moulds,...a.files.runs,...a.files.formulas]);try{return await An("/api/run",{file:t,version:null,text:Mt(e),from:A.paper.from}),t}catch(n){if(!(n instanceof Q)||n.status!==409)throw n;a.files.moulds.push({file:t,name:t,note:"",shipped:!1})}}}async function jx(e,t){try{return await An("/api/run",{file:e,version:A.paper.version,text:Mt(t)}),e}catch(n){if(!(n instanceof Q)||n.status!==409)throw n;let o=n.answer;A.conflict={version:o.version,text:o.text},T(),requestAnimationFrame(()=>window.scrollTo(0,0));return}}async function B_(e,t){A.paper.version=e,A.conflict=void 0,await kr(t)}var Hn="/shape/points",F_=500,Ms=(e,t)=>`${Hn}/${e}/${t}`,I_=e=>Array.from({length:e.least},()=>({}));function N_(e){let t=sn(Hn),n=Jx(),o=A.complaint?.field===Hn&&z_()===void 0?A.complaint.line:void 0;return u`<h3 id="points-title">Points</h3>
    <p class="hint">${e.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${e.columns.map(i=>u`<span
              >${i.label} (${il(Ms(-1,i.name),i.unit,H_(e,t.length,i.name))})</span
            >`)}
      </div>
      ${t.map((i,s)=>Ux(e,s,n))}
    </div>
    ${o?u`<p class="complaint">${o}</p>`:f}
    <button type="button" ?disabled=${t.length>=F_} @click=${()=>ul(e,t.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function Ux(e,t,n){let o=n.has(t)?`point ${n.get(t)}`:"empty point",i=qx(t),s=r=>{let{name:c,label:d,unit:h}=e.columns[r],b={label:d,pointer:Ms(t,c),unit:h,unit_before:H_(e,t,c)},$=`${d}, ${n.has(t)?o:`point ${t+1}`}`;return cp(b,i?`point-${t}-said`:void 0,Vx(e,t,r),$)};return u`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(t)??""}</span>${s(0)}${s(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>ul(e,t)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>j_(e,t)}>×</button>
    ${i?u`<p id="point-${t}-said" class="complaint">${i}</p>`:f}
  </div>`}function Jx(){let e=[...As(),...tl()].sort((t,n)=>t-n);return new Map(e.map((t,n)=>[t,n+1]))}function z_(){let e=/\bpoints? (\d+)/.exec(A.complaint?.line??"")?.[1];return e===void 0?void 0:As()[Number(e)-1]}function qx(e){let t=A.complaint?.field===Hn&&z_()===e;return Ho(`${Hn}/${e}`)??(t?A.complaint.line:void 0)}function H_(e,t,n){let o=(i,s)=>ns(E(A.document,Ms(i,s)));for(let i=t-1;i>=0;--i)if(o(i,n))return o(i,n);return e.columns.map(({name:i})=>o(t,i)).find(Boolean)??""}function ll(e,t){queueMicrotask(()=>document.getElementById(sl(Ms(e,t)))?.focus())}function ul(e,t){let n=[...sn(Hn)];n.length>=F_||(n.splice(t,0,{}),up(),ut(Hn,n),ll(t,e.columns[0].name))}function j_(e,t,n=0){let o=sn(Hn).filter((i,s)=>s!==t);up(),ut(Hn,o.length?o:[{}]),ll(Math.max(0,Math.min(t-(n?1:0),o.length-1)),e.columns[n].name)}function Vx(e,t,n){let[o,i]=e.columns.map(({name:s})=>s);return s=>{let r=!rl(Ms(t,o))&&!rl(Ms(t,i));if(s.key==="Enter"&&s.shiftKey)ul(e,t+1);else if(s.key==="Enter"&&n===0)ll(t,i);else if(s.key==="Enter"&&t+1<sn(Hn).length)ll(t+1,o);else if(s.key==="Enter")ul(e,t+1);else if(s.key==="Backspace"&&r&&sn(Hn).length>1)j_(e,t,t>0?1:0);else return;s.preventDefault()}}var Kx={weighings:[""]},pp=/\.(3mf|gltf|glb)$/i,cl={};function pl(e){let t=zo(e);return t?{kind:e,points:I_(t)}:{kind:e}}function dp(){ut("/water",Kx)}function U_(e){return u`${i1(e)}
    ${bt("shape")&&bt("mesh")?u`<p class="hint">The mesh is measured; its measures are a second opinion.</p>`:f}
    ${bt("shape")?Dt("Shape",Nn(),Object.entries(A_),Gx):f}
    <div class="beside ${zo(Nn())?"rows":""}">
      <div>
        ${mp()} ${bt("shape")?Yx():f} ${bt("mesh")?Zx():f}
        ${fp()} ${bt("water")?Xx():f} ${t1()}
      </div>
      <div class="stays">${Ps(A.answer,A.is_old,V_())} ${n1(e)}</div>
    </div>`}function Gx(e){cl[Nn()]=E(A.document,"/shape"),A.answer=void 0,ut("/shape",cl[e]??pl(e))}function J_(){for(let e of Object.keys(cl))delete cl[e]}function mp(){let{from_name:e}=A.paper;return rn({label:"What you call it",pointer:"/name",wide:!0,hint:e?`${e} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function Yx(){let e=Nn(),t=zo(e);return u`${Rs(e).length?u`<div class="row">
          ${Rs(e).map(n=>rn({...n,pointer:`/shape/${n.name}`}))}
        </div>`:f}
  ${t?N_(t):f}`}function fp(e=rp()){return u`<div class="row">
      ${e?f:rn({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${rn({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${rn({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${rn({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var hp=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],gp=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function Zx(){let e=o=>String(E(A.document,`/mesh/${o}`)??""),t=(o,i,s)=>{let r=Ho(`/mesh/${i}`);return u`<h4>${o}</h4>
      ${Dt(o,e(i),s,c=>ut(`/mesh/${i}`,c||void 0))}
      ${r?u`<p class="complaint">${r}</p>`:f}`},n=Ho("/mesh/file");return u`<h3>Its mesh <small>${e("file")}</small></h3>
    ${n?u`<p class="complaint">${n}</p>`:f}
    ${pp.test(e("file"))&&!e("unit")?f:t("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${t("What it shows","role",hp)} ${t("Which way is up","up",gp)}
    ${e("role")==="body"?Qx():f}
    <div class="row">
      ${rn({label:"Hollows to fill, by number",pointer:"/mesh/group",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${rn({label:"Straight up, if it leans",pointer:"/mesh/leaning_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function Qx(){let e=E(A.document,"/mesh/on_board")===!0?"yes":"no";return u`<h4>Open below, and stood on a board?</h4>
    ${Dt("Stood on a board",e,[["no","No"],["yes","Yes, the board closes it"]],t=>ut("/mesh/on_board",t==="yes"?!0:void 0))}`}function Xx(){let e=E(A.document,"/water/to"),t=e===void 0?void 0:e==="brim"?"brim":E(e,"/depth")!==void 0?"depth":"below_brim",n=s=>ut("/water/to",s==="brim"?"brim":{[s]:""}),o=E(A.document,"/water/of"),i=t===void 0||t==="brim"?Ho("/water/to"):void 0;return u`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${rn({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${Dt("Filled to",t,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?u`<p class="complaint">${i}</p>`:f}
    ${t==="depth"?rn({label:"Depth of the water",pointer:"/water/to/depth",unit:"mm"}):f}
    ${t==="below_brim"?rn({label:"Water below the brim",pointer:"/water/to/below_brim",unit:"mm"}):f}
    <h4>Weighed in</h4>
    ${Dt("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],s=>ut("/water/of",s))}
    <div class="row">
      ${sn("/water/weighings").map((s,r)=>rn({label:`Water, round ${r+1}`,pointer:`/water/weighings/${r}`,unit:"g"},e1(r)))}
    </div>
    ${A.complaint?.field==="/water/weighings"?u`<p class="complaint">${A.complaint.line}</p>`:f}
    <button type="button" @click=${q_}>One more round</button>`}function q_(){let e=sn("/water/weighings").length;ut(`/water/weighings/${e}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${e}`)?.focus())}var e1=e=>t=>{t.key==="Enter"&&(e+1===sn("/water/weighings").length?q_():document.getElementById(`d-water-weighings-${e+1}`)?.focus())};function t1(){let e=(t,n)=>u`<button type="button" @click=${n}>${t}</button>`;return u`<div class="choice">
    ${bt("shape")?f:e("Add measures, as a second opinion",()=>ut("/shape",pl("block")))}
    ${bt("shape")&&bt("mesh")?e("Leave the measures out",()=>ut("/shape",void 0)):f}
    ${bt("water")?e("Leave the water out",()=>ut("/water",void 0)):e("Add weighed water",dp)}
  </div>`}function V_(){let e=tl().length;return e?[...nl(),e===1?"the other number of a point":`the other numbers of ${e} points`]:nl()}function n1(e){let t=String(A.document.name??"").trim(),n=al(t),o=A.answer&&!A.is_old&&!A.complaint&&!V_().length&&t&&!n,{file:i}=A.paper;return u`<button type="button" class="strong" ?disabled=${!o} @click=${()=>{kr(e)}}>
      ${i?"Save the change":"Use this mould"}
    </button>
    ${i?u`<p class="aside">It stays in ${i}.</p>`:f}
    ${t?f:u`<p class="hint">Give it a name first.</p>`} ${_p(t,n)}
    ${A.complaint?u`<p class="alarm" role="status">${o1(A.complaint.field)}${A.complaint.line}</p>
            ${Pa(A.document,A.complaint.field,A.complaint.line,ut)}`:f}`}var _p=(e,t)=>t?u`<p class="complaint" role="status">
        Another mould is called ${e} already (${t}); give this one a name of its own.
      </p>`:f;function o1(e){let[,t]=/^\/shape\/points\/(\d+)/.exec(e)??[];if(t)return`Point ${Number(t)+1}: `;if(e==="/shape/points")return"";let n=Rs(Nn()).find(({name:s})=>e===`/shape/${s}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${e.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:e?`${e.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}function i1(e){let t=A.conflict;if(!t)return A.mine?r1():f;let n=t.text===null,o=()=>{W_()||s1()};return u`<section class="banner" aria-labelledby="conflict-title" role="alert">
    <h2 id="conflict-title">${A.paper.file} has ${n?"been taken away":"changed"} underneath</h2>
    <p>
      Another hand or tab wrote the file since you opened it here. Nothing of yours was written yet. Which is to stay?
    </p>
    <div class="choice">
      ${n?f:u`<button type="button" @click=${o}>Take what is in the file</button>`}
      <button type="button" @click=${()=>{B_(t.version,e)}}>Keep what is on this page</button>
    </div>
  </section>`}function s1(){A.complaint={field:"",line:`What is in ${A.paper.file} now is no mould: keep what is on this page.`},T()}var r1=()=>u`<section class="banner" aria-label="What you typed">
    <p>This is what another hand wrote. What you typed is still here.</p>
    <button type="button" @click=${C_}>Change to the other text</button>
  </section>`;var a1=200*2**20,Ri;function Y_(){Ri=void 0}async function K_(e){if(!e)return;Ri={name:e.name,share:0,sizes:[],is_measuring:!1,asked:0};let t=Ri;if(ut("/name",e.name.replace(/\.\w+$/,"")),T(),e.size>a1)return t.complaint=`${e.name} has ${Math.ceil(e.size/2**20)} MiB; 200 MiB is the most: export it with fewer facets`,T();try{let n=await kd(e,o=>{t.share=o,T()});t.share=1,t.upload=n.file,await Z_(t)}catch(n){t.complaint=n instanceof Q?n.message:String(n),T()}}async function Z_(e){let t=++e.asked;e.is_measuring=!0,e.complaint=e.answer=void 0,T();let n={file:e.upload,unit:e.unit,role:e.role,up:e.up};try{let o=await es(n);if(t!==e.asked)return;e.answer=o}catch(o){if(!(o instanceof Q))throw o;if(t!==e.asked)return;e.sizes=e.unit?e.sizes:l1(o.complaint.problem),e.complaint=e.sizes.length&&!e.unit?void 0:fn(o.complaint)}e.is_measuring=!1,T()}function l1(e){return[...e.matchAll(/([\d.]+ x [\d.]+ x [\d.]+) (mm|cm|in)\b/g)].slice(0,3).map(([,t,n])=>[n,t.replaceAll(" x "," \xD7 ")])}function $p(e){Object.assign(Ri,e),Z_(Ri)}function Q_(e){return u` <div class="drop" @dragover=${o=>o.preventDefault()} @drop=${o=>{o.preventDefault(),K_(o.dataTransfer?.files[0])}}>
      <label for="mesh-file">Drop a mesh file here, or choose one: STL, OBJ, PLY, OFF, 3MF, glTF or GLB</label>
      <input id="mesh-file" type="file" accept=".stl,.obj,.ply,.off,.3mf,.gltf,.glb" @change=${o=>{let i=o.target;K_(i.files?.[0]),i.value=""}} />
    </div>
    ${Ri?u1(Ri,e):f}`}function u1(e,t){let o=(e.sizes.length?e.sizes:[["mm",""],["cm",""],["in",""]]).map(([i,s])=>[i,s?`${i}: ${s} ${i}`:i]);return u` <h3>${e.name}</h3>
    ${e.share<1&&!e.complaint?u`<label for="sent">Sending, ${Math.round(100*e.share)} %</label
            ><progress id="sent" max="1" .value=${e.share}></progress>`:f}
    ${e.is_measuring?u`<p role="status">Measuring ...</p>`:f}
    ${e.upload&&!pp.test(e.name)?u`<h4 id="unit-title">${e.unit?"Its unit":"Which size is it?"}</h4>
            ${Dt("Unit of the file's numbers",e.unit,o,i=>$p({unit:i}))}`:f}
    ${e.complaint?u`<p class="alarm" role="alert">${e.complaint}</p>`:f}
    ${e.upload&&(e.unit||e.answer)?u`<h4>What it shows</h4>
            ${Dt("Role",e.role??e.answer?.gauge.role,hp,i=>$p({role:i}))}
            <h4>Which way is up</h4>
            ${Dt("Up",e.up??"",gp,i=>$p({up:i||void 0}))}`:f}
    ${e.answer?u`${Ps(e.answer)} ${c1(e,t)}`:f}`}var X_=e=>e.answer.gauge.role!=="cavity"||e.answer.gauge.pockets.length>1;function c1(e,t){let n=String(A.document.name??"").trim(),o=al(n),i=n&&!o&&!e.is_keeping;return u`${mp()} ${fp(X_(e))} ${_p(n,o)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!i} @click=${()=>G_(e,t)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${e.is_keeping} @click=${()=>G_(e)}>Say more about it first</button>
    </div>
    ${e.is_keeping?u`<p role="status">Keeping it ...</p>`:f}
    <p class="hint">
      More is: water weighed in it, measures as a second opinion, a mesh that leans or stands on a board.
    </p>`}async function G_(e,t){e.is_keeping=!0,T();try{let n=await jt("/api/keep",{upload:e.upload,as:m1(e.name)}),o=p1(e,n.file);if(!t||e.answer.gauge.pockets.length>1&&!await d1(o))return e$(o);_o(o,{version:null}),await kr(t),A.complaint&&(e.complaint=A.complaint.line)}catch(n){e.complaint=n instanceof Q?n.message:String(n)}e.is_keeping=!1,T()}function p1(e,t){let n={file:t,role:e.answer.gauge.role};e.unit&&(n.unit=e.unit),e.up&&(n.up=e.up);let{cavities:o,...i}=A.document;return{...i,...X_(e)||o===void 0?{}:{cavities:o},mesh:n}}async function d1(e){try{return await Xi({file:"new.mould.json",mould:e}),!0}catch(t){if(t instanceof Q&&t.status===422)return!1;throw t}}function m1(e){let t=e.replaceAll(/[^\w.-]+/g,"_"),n=/\.\w+$/.exec(t)?.[0]??"";return En(t.slice(0,-n.length||void 0)+".json",a.files.meshes.map(o=>({file:o.file.replace(/\.\w+$/,".json")}))).replace(/\.json$/,n)}var wp={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},bp,n$="",t$={schema:"brimwright.mould/1",name:"",cavities:1,owned:1};function dl(e){if(!e)return xr(void 0,"");_o(e==="mesh"?t$:{...t$,shape:pl("block")},{version:null}),e==="water"&&dp(),xr(e==="mesh"?"mesh":"form",wp[e])}async function o$(e){let t=await et(e),n=JSON.parse(t.text),o=String(n.name??e),i=t.shipped?{version:null,from:e,from_name:o}:{version:t.version,file:e};_o(t.shipped?{...n,name:""}:n,i),xr("form",t.shipped?`A copy of ${o}`:`Change ${o}`)}function i$(e){_o(e.document,e.paper),xr("form",String(e.document.name??"").trim()||"A mould of your own")}function e$(e){_o(e,{version:null}),xr("form","More about this mould")}function xr(e,t){bp=e,n$=t,Y_(),J_(),T(),e&&requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function s$(e){if(bp)return u`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n$}</h2>
    ${bp==="mesh"?Q_(e):U_(e)}
  </section>`}var ml,r$=()=>ml;function yp(){ml=void 0}function fl(e,t){let n=a.files?.moulds.find(i=>i.file===e),o=a.catalogue.find(i=>i.path===e);ml={file:e,name:n?.name||o?.name||e,note:n?.note??"",shipped:n?.shipped??!0,owned:1,said:t},f1(ml),T(),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function f1(e){try{let[t,n]=await Promise.all([es({file:e.file}),et(e.file)]);e.owned=e.shipped?1:Number(JSON.parse(n.text).owned??1),e.answer=t}catch(t){e.complaint=t instanceof Q?t.message:String(t)}T()}function a$(e,t){let n=()=>t(async()=>{await o$(e.file),yp()});return u`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${e.name} <small>${e.shipped?"of the catalogue":`your own, ${e.file}`}</small>
    </h2>
    ${e.said?u`<p role="status">${e.said}</p>`:f} ${e.note?u`<p>${e.note}</p>`:f}
    ${e.complaint?u`<p class="alarm" role="alert">It cannot be measured: ${e.complaint}</p>`:f}
    <div class="beside">
      <div>
        ${e.answer?Ps(e.answer):e.complaint?f:u`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${e.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${e.complaint?f:h1(e,t)}
    </div>
  </section>`}function h1(e,t){let n=o=>()=>t(()=>Am({mould:e.file,name:e.name,formula:o,...g1(e.answer,e.owned)}));return u`<div>
    <h3>Make a run with it: which base?</h3>
    <ul class="cards">
      ${(a.files?.formulas??[]).map(o=>u`<li>
            <button type="button" ?disabled=${!e.answer} @click=${n(o.file)}>
              <b>${o.name}</b><span>${o.note||o.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function g1({gauge:e},t){let n=e.pockets[0];return{cavities:e.pockets.length*t,deep_mm:n.brim_mm-n.floor_mm}}var Ai="",Ds="";function l$(e){let t=[...a.files?.formulas??[]].sort((o,i)=>Number(o.shipped)-Number(i.shipped)),n=o=>()=>e(async()=>{await o(Ai.trim()),Ai=Ds=""});return u`<section aria-labelledby="formulas-title">
    <h2 id="formulas-title">Formulas</h2>
    <ul class="cards">
      ${t.map(o=>u`<li>
            <button type="button" @click=${()=>e(()=>ku(o.file))}>
              <b>${o.name||o.file}</b><span>${o.shipped?"came with the program":o.file}</span>
            </button>
          </li>`)}
    </ul>
    <h3>A new formula</h3>
    <div class="row">
      <div class="field">
        <label for="new-formula">What you call it</label>
        <input
          id="new-formula"
          .value=${St(Ai)}
          @input=${o=>(Ai=o.target.value,T())}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" ?disabled=${!Ai.trim()} @click=${n(Dm)}>Begin from blank</button>
    </div>
    <div class="row">
      <div class="field choose">
        <label for="copied-formula">Or as a copy of</label>
        <select
          id="copied-formula"
          @change=${o=>(Ds=o.target.value,T())}
        >
          <option value="" .selected=${St(Ds==="")}>choose ...</option>
          ${t.map(o=>u`<option value=${o.file} .selected=${St(o.file===Ds)}>${o.name||o.file}</option>`)}
        </select>
      </div>
      <button
        type="button"
        ?disabled=${!Ai.trim()||!Ds}
        @click=${n(o=>Em(Ds,o))}
      >
        Make the copy
      </button>
    </div>
    ${Ai.trim()?"":u`<p class="hint">A new formula needs a name first.</p>`}
  </section>`}var Tr="";function hl(){if(a.formulas.apart)return void rr().then(e=>e&&hl());a.view="start",Tr="",yp(),dl(void 0),vp(_1),requestAnimationFrame(()=>document.querySelector("h1")?.focus())}async function _1(){a.files=await Rn("/api/files"),na()}function $1(e){dl(void 0),fl(e,`Saved in ${e}.`)}async function vp(e){Tr="";try{await e()}catch(t){Tr=t instanceof Q?t.message:String(t)}T()}async function c$(e){await vp(e),window.scrollTo(0,0)}function p$(){let e=r$(),t=s$($1);return u` <h1 tabindex="-1">What will you make?</h1>
    <p class="choice">
      ${a.file?u`<button type="button" @click=${()=>(a.view="run",T())}>Back to the run</button>`:f}
      ${e||t?u`<button type="button" @click=${hl}>Back to runs and moulds</button>`:f}
    </p>
    ${Tr?u`<p class="alarm" role="alert">${Tr}</p>`:f}
    ${(a.files?.cut??[]).map(n=>u`<p class="alarm">
          More lies in ${n.folder} than is looked at: ${n.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}
    ${e?a$(e,c$):t||u`${b1()} ${v1()} ${w1()} ${l$(vp)}`}`}function b1(){let e=a.files?.runs??[],t=e.filter(o=>!o.shipped),n=e.filter(o=>o.shipped);return u`<section aria-labelledby="runs-title">
    <h2 id="runs-title">Open a run</h2>
    ${t.length?u`<ul class="cards">
            ${t.map(u$)}
          </ul>`:u`<p class="aside">None of your own in ${a.files?.folder} yet.</p>`}
    <h3>Examples</h3>
    <ul class="cards">
      ${n.map(u$)}
    </ul>
  </section>`}function u$(e){return u`<li>
    <button type="button" @click=${()=>c$(()=>mi(e.file))}>
      <b>${e.name||e.file}</b><span>${e.file}</span>
    </button>
  </li>`}function w1(){return u`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">A mould that is there: make a run with it, or change it</h2>
    <ul class="cards">
      ${y1()}${a.catalogue.map(e=>u`<li>
            <button type="button" @click=${()=>fl(e.path)}>
              <b>${e.name}</b
              ><span>${se(gt(a.units,e.brimful_ml))}, ${e.cavities} in one; ${e.description}</span>
            </button>
          </li>`)}
    </ul>
  </section>`}function y1(){return(a.files?.moulds??[]).filter(t=>!t.shipped).map(t=>u`<li>
        <button type="button" @click=${()=>fl(t.file)}>
          <b>${t.name||t.file}</b><span>${Kd(t.file)}</span>
        </button>
      </li>`)}function v1(){return u`<section aria-labelledby="own-title">
    <h2 id="own-title">New run with a mould of your own</h2>
    ${k1()}
    <div class="choice">
      ${Object.entries(wp).map(([e,t])=>u`<button type="button" @click=${()=>dl(e)}>${t}</button>`)}
    </div>
  </section>`}function k1(){return O_().map(e=>{let t=String(e.document.name??"").trim()||e.paper.from_name||"a mould without a name yet";return u`<div class="banner">
      <p>What you typed of <b>${t}</b> is still here, and in no file yet.</p>
      <div class="choice">
        <button type="button" @click=${()=>i$(e)}>Go on with it</button>
        <button type="button" @click=${()=>{ol(e.paper),T()}}>Let it go</button>
      </div>
    </div>`})}var d$=document.getElementById("page");function m$(){return u` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      To the figures
    </button>
    ${Lh(hl)} ${Sm()}
    <main id="main" tabindex="-1" class=${a.is_old&&a.view!=="start"?"old-now":""}>
      ${a.fault?u`${a.view==="start"?f:u`<h1>Brimwright</h1>`}
              <p class="alarm" role="alert">${a.fault}</p>`:f}
      ${a.view==="run"?Oh():a.view==="formula"?P_():a.view==="start"?p$():a.fault?f:u`<h1>Brimwright</h1>
                    <p>Reading the runs of this folder ...</p>`}
    </main>
    <p class="unseen" role="status">${a.said}</p>`}Ld(()=>{ii(m$(),d$),f$()});addEventListener("resize",f$);ii(m$(),d$);document.addEventListener("keydown",e=>{!(e.ctrlKey||e.metaKey)||e.key.toLowerCase()!=="z"||a.view==="run"&&(e.preventDefault(),(e.shiftKey?ua:ls)())});document.addEventListener("visibilitychange",()=>{a.view!=="run"&&a.view!=="formula"||(document.visibilityState==="visible"?(Zn(),wu().catch(()=>{})):a.saving.is==="waiting"&&So())});function x1(){if(!a.file)return kp();a.fault=void 0,(a.saving.is==="failed"||a.saving.is==="waiting")&&Zs(),$t(),Zn(),T()}function kp(){a.fault=void 0,Rm().catch(e=>{a.fault=e instanceof Q&&[401,403].includes(e.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":e instanceof Error?e.message:String(e),e instanceof Q&&e.may_pass&&window.setTimeout(kp,2e3),T()})}function f$(){let e=document.querySelector(".foremost")?.offsetHeight??0;document.documentElement.style.setProperty("--foremost",`${e}px`)}vd(x1);kp();
